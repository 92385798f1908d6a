// What holds for every inverter and every load.
#include <gtest/gtest.h>
#include <rapidcheck.h>

#include "inverter/model.hpp"

namespace {

using units::watt;

double between(double low, double high) {
    return low + (high - low) * *rc::gen::inRange(0, 100'001) / 100'000.0;
}

// Absent when the figures drawn contradict one another.
std::optional<inverter::Model> any_model() {
    scenario::Inverter described;
    described.continuous = between(100.0, 6000.0) * watt;
    if (*rc::gen::arbitrary<bool>()) {
        described.idle = between(0.0, 0.03) * described.continuous;
    }
    const int points = *rc::gen::inRange(0, 7);
    for (int i = 0; i < points; ++i) {
        described.efficiency.push_back(
            {units::Share(between(0.02, 1.0)), units::Efficiency(between(0.6, 0.98))});
    }
    scenario::Assumptions assumed;
    const auto made = inverter::model_of(described, 12.8 * units::volt, assumed);
    return made ? std::optional(*made) : std::nullopt;
}

TEST(inverter_properties, no_accepted_inverter_gives_more_than_it_takes) {
    EXPECT_TRUE(rc::check([] {
        const std::optional<inverter::Model> made = any_model();
        RC_PRE(made.has_value());
        const units::Power real = between(0.0, 2.0) * made->continuous;
        const double efficiency =
            inverter::efficiency(*made, real, units::ApparentPower(real)).value();
        RC_ASSERT(efficiency >= 0.0);
        RC_ASSERT(efficiency < 1.0 + 1e-12);
        RC_ASSERT(inverter::loss(*made, units::ApparentPower(real)) >= 0.0 * watt);
    }));
}

TEST(inverter_properties, drawing_more_always_takes_more) {
    EXPECT_TRUE(rc::check([] {
        const std::optional<inverter::Model> made = any_model();
        RC_PRE(made.has_value());
        const units::Power less = between(0.0, 1.0) * made->continuous;
        const units::Power more = less + between(0.0, 1.0) * made->continuous;
        RC_ASSERT(inverter::dc_power(*made, more, units::ApparentPower(more)) >=
                  inverter::dc_power(*made, less, units::ApparentPower(less)));
    }));
}

TEST(inverter_properties, no_load_is_more_efficient_than_the_peak) {
    EXPECT_TRUE(rc::check([] {
        const std::optional<inverter::Model> made = any_model();
        RC_PRE(made.has_value());
        const units::Power real = between(0.0, 1.0) * made->continuous;
        RC_ASSERT(inverter::efficiency(*made, real, units::ApparentPower(real)).value() <=
                  inverter::peak_efficiency(*made).is.value() + 1e-12);
    }));
}

TEST(inverter_properties, points_taken_from_any_lossy_curve_give_it_back) {
    EXPECT_TRUE(rc::check([] {
        const double rating = between(300.0, 5000.0);
        const double idle = between(0.001, 0.03) * rating;
        const double linear = between(0.0, 0.1);
        const double quadratic = between(0.0, 0.2);
        const auto drawn = [&](double power) {
            return power + idle + linear * power + quadratic * power * power / rating;
        };
        scenario::Inverter described;
        described.continuous = rating * watt;
        if (*rc::gen::arbitrary<bool>()) {
            described.idle = idle * watt;
        }
        for (const double share : {0.07, 0.3, 0.8}) {
            const double power = share * rating;
            described.efficiency.push_back(
                {units::Share(share), units::Efficiency(power / drawn(power))});
        }
        scenario::Assumptions assumed;
        const auto made = inverter::model_of(described, 12.8 * units::volt, assumed);
        RC_ASSERT(made.has_value());
        const double power = between(0.0, 1.0) * rating;
        RC_ASSERT(
            std::abs(inverter::dc_power(*made, power * watt, power * units::volt_ampere) / watt -
                     drawn(power)) <= 1e-9 * rating);
    }));
}

}  // namespace
