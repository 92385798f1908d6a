// The loss curve against figures that were not computed by this program.
#include <gtest/gtest.h>

#include "inverter/model.hpp"

namespace {

using units::watt;

inverter::Model model(double continuous, std::optional<double> idle,
                      std::vector<std::pair<double, double>> efficiency) {
    scenario::Inverter described;
    described.continuous = continuous * watt;
    if (idle) {
        described.idle = *idle * watt;
    }
    for (const auto& [at, is] : efficiency) {
        described.efficiency.push_back({units::Share(at), units::Efficiency(is)});
    }
    scenario::Assumptions assumed;
    return inverter::model_of(described, 12.8 * units::volt, assumed).value();
}

double efficiency_at(const inverter::Model& made, double share) {
    const units::Power real = share * made.continuous;
    return inverter::efficiency(made, real, units::ApparentPower(real)).value();
}

// [Macedo] closed form for 10, 50 and 100 %, evaluated by hand for 0.84, 0.93 and 0.90.
// Tolerance: the digits printed.
TEST(published_inverter, three_efficiencies_give_the_closed_form_constants) {
    const inverter::Model made = model(1000.0, std::nullopt, {{.1, .84}, {.5, .93}, {1.0, .90}});
    EXPECT_NEAR(made.losses.idle / (1000.0 * watt), 0.019984, 5e-7);
    EXPECT_NEAR(made.losses.linear, -0.020524, 5e-7);
    EXPECT_NEAR(made.losses.quadratic, 0.111652, 5e-7);
    const inverter::PeakEfficiency peak = inverter::peak_efficiency(made);
    EXPECT_NEAR(peak.at / (1000.0 * watt), 0.4231, 5e-5);
    EXPECT_NEAR(peak.is.value(), 0.93114, 5e-6);
}

// The usual curve of a 12 V, 3 kW inverter (idle 30 W, 0.91 at half, 0.88 at full load), computed
// by hand from [Jantsch 1992]'s form. Tolerance: the digits printed.
TEST(published_inverter, the_usual_curve_has_its_handbook_shape) {
    const inverter::Model made = model(3000.0, std::nullopt, {});
    const std::pair<double, double> expected[] = {{.02, .652}, {.05, .809}, {.1, .877}, {.3, .915},
                                                  {.5, .910},  {1.0, .880}, {2.0, .816}};
    for (const auto& [share, efficiency] : expected) {
        EXPECT_NEAR(efficiency_at(made, share), efficiency, 5.5e-4) << share;
    }
    EXPECT_NEAR(inverter::loss(made, 3000.0 * units::volt_ampere) / watt, 409.1, 0.05);
    EXPECT_NEAR(inverter::dc_power(made, 3000.0 * watt, 3000.0 * units::volt_ampere) / watt, 3409.1,
                0.05);
}

// "Direct current in = alternating current / 0.90 + 18 W idle": a straight line that a file
// states by any of its points. 61.29 W of appliance then take 86.10 W.
TEST(published_inverter, a_straight_line_stated_by_its_points_is_met_everywhere) {
    const auto on_the_line = [](double share) {
        return std::pair(share, 3000.0 * share / (3000.0 * share / 0.90 + 18.0));
    };
    const inverter::Model models[] = {
        model(3000.0, 18.0, {on_the_line(.5), on_the_line(1.0)}),
        model(3000.0, 18.0, {on_the_line(.1), on_the_line(.5), on_the_line(1.0)}),
        model(3000.0, std::nullopt, {on_the_line(.1), on_the_line(.5), on_the_line(1.0)}),
        model(3000.0, 18.0,
              {on_the_line(.02), on_the_line(.1), on_the_line(.2), on_the_line(.5),
               on_the_line(1.0)}),
    };
    for (const inverter::Model& made : models) {
        for (const double power : {0.0, 1.0, 25.0, 61.29, 76.0, 1000.0, 3000.0, 6000.0}) {
            EXPECT_NEAR(inverter::dc_power(made, power * watt, power * units::volt_ampere) / watt,
                        power / 0.90 + 18.0, 1e-9 * (power + 1.0));
        }
        EXPECT_NEAR(inverter::dc_power(made, 61.29 * watt, 61.29 * units::volt_ampere) / watt,
                    86.10, 0.005);
    }
}

// "88 %, idle inside that": one figure at the load itself. 350 W then take 350/0.88 = 397.7 W.
TEST(published_inverter, an_efficiency_counts_idle_once) {
    const inverter::Model made = model(3000.0, 18.0, {{350.0 / 3000.0, 0.88}});
    EXPECT_NEAR(inverter::dc_power(made, 350.0 * watt, 350.0 * units::volt_ampere) / watt, 397.73,
                0.005);
}

// The worked example of inverter/method.md, computed apart in exact fractions.
TEST(published_inverter, the_worked_example_of_the_method_comes_out) {
    const inverter::Model made = model(2400.0, 18.0, {{.1, .86}, {.5, .91}, {1.0, .88}});
    EXPECT_NEAR(made.losses.linear, 0.073377, 5e-7);
    EXPECT_NEAR(made.losses.quadratic, 0.048508, 5e-7);
    EXPECT_NEAR(inverter::dc_power(made, 300.0 * watt, 300.0 * units::volt_ampere) / watt, 341.83,
                0.005);
}

}  // namespace
