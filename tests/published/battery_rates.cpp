// Capacity against rate: makers' tables, the fits made from them, Peukert's exponents.
#include <array>
#include <cmath>

#include "battery/advance.hpp"
#include "battery/cell/chemistry.hpp"
#include "battery/cell/fit.hpp"
#include "battery/pack_model.hpp"

namespace {

using namespace battery;
using namespace units;

RatedCharge row(double hours, double ampere_hours) {
    return {.charge = ampere_hours * ampere_hour, .over = hours * hour};
}

// [Flooded 225 Ah sheet] rows 185/207/225 Ah at 5/10/20 h; the fitted numbers were computed outside this
// program and are given to six or seven digits.
TEST(published_rates, two_wells_through_three_rows_of_a_flooded_battery) {
    const std::array rows{row(5, 185), row(10, 207), row(20, 225)};
    const Fit fit = fit_rows(rows).value();
    EXPECT_NEAR(fit.kinetics.available.value(), 0.575005, 0.6e-6);
    EXPECT_NEAR(fit.kinetics.rate / per_hour, 0.366595, 0.6e-6);
    EXPECT_NEAR(fit.kinetics.total / ampere_hour, 247.6670, 0.6e-4);
    EXPECT_LT(fit.residual.value(), 1e-10);
    // the sheet's own 100 h row is 250 Ah: 2.9 % above what the other three predict
    const Charge slow = capacity_over(fit.kinetics, 100.0 * hour);
    EXPECT_NEAR(slow / ampere_hour, 242.77, 0.006);
    EXPECT_NEAR(slow / (250.0 * ampere_hour), 1.0, 0.03);
}

// [AGM 100 Ah sheet] rows at 1.85 V a cell
TEST(published_rates, two_wells_through_three_rows_of_an_agm_battery) {
    const std::array rows{row(1, 53.0), row(5, 82.0), row(20, 102.6)};
    const Fit fit = fit_rows(rows).value();
    EXPECT_NEAR(fit.kinetics.available.value(), 0.369590, 0.6e-6);
    EXPECT_NEAR(fit.kinetics.rate / per_hour, 0.919484, 0.6e-6);
    EXPECT_NEAR(fit.kinetics.total / ampere_hour, 112.1165, 0.6e-4);
    EXPECT_NEAR(capacity_over(fit.kinetics, 3.0 * hour) / ampere_hour, 71.00, 0.006);
    EXPECT_NEAR(capacity_over(fit.kinetics, 10.0 * hour) / ampere_hour, 94.57, 0.006);
    // sheet: 70.5 and 96.5 Ah
    EXPECT_NEAR(capacity_over(fit.kinetics, 3.0 * hour) / ampere_hour, 70.5, 0.02 * 70.5);
    EXPECT_NEAR(capacity_over(fit.kinetics, 10.0 * hour) / ampere_hour, 96.5, 0.025 * 96.5);
}

// All five usable rows of [Flooded 225 Ah sheet] (the 25 A reserve contradicts its own 5 h row): the fit
// found outside this program was c 0.431, k 0.674 / h, C 250.8 Ah, 1.4 % rms.
TEST(published_rates, the_best_two_wells_for_five_rows) {
    const std::array rows{row(115.0 / 60.0, 75.0 * 115.0 / 60.0), row(5, 185), row(10, 207),
                          row(20, 225), row(100, 250)};
    const Fit fit = fit_rows(rows).value();
    EXPECT_NEAR(fit.kinetics.available.value(), 0.431, 0.001);
    EXPECT_NEAR(fit.kinetics.rate / per_hour, 0.674, 0.001);
    EXPECT_NEAR(fit.kinetics.total / ampere_hour, 250.8, 0.1);
    EXPECT_NEAR(fit.residual.value(), 0.014, 0.0006);
}

// [Gel ratings]: 20 h capacity and minutes at 25 A of four gel batteries; with k = 0.5 / h the fit
// outside this program gave widths of 0.62 to 0.64 and totals of 1.055 to 1.061 times the 20 h
// value.
TEST(published_rates, four_gel_batteries_agree) {
    const double rows[][2] = {{70, 130}, {86, 167}, {95, 188}, {180, 388}};
    for (const auto& [capacity, minutes] : rows) {
        const Fit fit = fit_two_rows(row(20, capacity), row(minutes / 60.0, 25.0 * minutes / 60.0),
                                     0.5 * per_hour)
                            .value();
        EXPECT_NEAR(fit.kinetics.available.value(), 0.63, 0.016);
        EXPECT_NEAR(fit.kinetics.total / (capacity * ampere_hour), 1.058, 0.0036);
    }
}

// Exponents printed to two decimals in [Peukert list]; computed to four from the same ratings.
TEST(published_rates, exponents_from_20_h_capacity_and_reserve_time) {
    const struct {
        double capacity, minutes, printed, computed;
    } rows[] = {{225, 447, 1.24, 1.2367},
                {85, 135, 1.23, 1.2330},
                {70, 130, 1.13, 1.1304},
                {250, 535, 1.17, 1.1654}};
    for (const auto& each : rows) {
        const double exponent =
            peukert_from_reserve(each.capacity * ampere_hour, each.minutes * minute)->exponent;
        EXPECT_NEAR(exponent, each.printed, 0.0051);
        EXPECT_NEAR(exponent, each.computed, 0.6e-4);
    }
}

// The same list prints 1.28 for 105 Ah with 160 min, and 1.20 for 43 Ah with 140 min: both
// misprints.
TEST(published_rates, a_misprinted_rating_is_refused_or_computed_and_never_copied) {
    EXPECT_NEAR(peukert_from_reserve(105.0 * ampere_hour, 160.0 * minute)->exponent, 1.291, 0.0006);
    const auto refused = peukert_from_reserve(43.0 * ampere_hour, 140.0 * minute);
    ASSERT_FALSE(refused.has_value());
    EXPECT_NE(in_english(refused.error().front().found).find("0.876"), std::string::npos);
}

struct RateRow {
    double amperes, published_minutes, model_minutes;
};

// The wells, the voltage over the charge left and the resistance fitted together; the rated charge
// is what these wells give over 20 h.
struct Fitted {
    Kinetics kinetics{113.5 * ampere_hour, Share(0.380), 0.817 * per_hour};
    OpenCircuit open_circuit =
        open_circuit_of(scenario::Chemistry::agm)
            .from_lowest(lowest_charge(kinetics, capacity_over(kinetics, 20.0 * hour)));
};

double minutes_at(Voltage cut_off, double amperes) {
    const Fitted agm;
    const Prepared pack = prepare({.kinetics = agm.kinetics,
                                   .open_circuit = &agm.open_circuit,
                                   .inner = 0.0064 * ohm,
                                   .stops = {.cut_off = cut_off}});
    const Advanced run = advance(pack, Wells{}, amperes * ampere, 40.0 * hour);
    EXPECT_NE(run.ending, Ending::completed);
    return run.time / minute;
}

// [AGM 100 Ah sheet], 25 degC, to 11.10 V: minutes published, and those of the same model computed
// outside this program (bisection on the closed form, 3 decimals). 4 %: the residual of the joint
// fit is 1.8 % rms.
TEST(published_rates, a_whole_row_of_an_agm_sheet_to_its_cut_off) {
    const RateRow rows[] = {{208.8, 5, 5.061},    {136.4, 15, 14.480},  {88.4, 30, 30.701},
                            {53.0, 60, 60.933},   {31.3, 120, 120.860}, {23.5, 180, 180.258},
                            {16.4, 300, 297.507}, {9.65, 600, 585.918}, {5.13, 1200, 1207.663}};
    double squares = 0.0;
    for (const RateRow& each : rows) {
        const double minutes = minutes_at(11.10 * volt, each.amperes);
        const double off = minutes / each.published_minutes - 1.0;
        squares += off * off;
        EXPECT_NEAR(off, 0.0, 0.04) << each.amperes;
        EXPECT_NEAR(minutes / each.model_minutes, 1.0, 1e-4) << each.amperes;
        std::printf("%6.2f A  sheet %6.0f min  here %9.3f min  %+.2f %%\n", each.amperes,
                    each.published_minutes, minutes, 100.0 * off);
    }
    EXPECT_NEAR(std::sqrt(squares / std::size(rows)), 0.018, 0.0005);
}

// The sheet's other cut-off, 1.80 V a cell, was not fitted to: 7 %, and 11 % for the 10 min row,
// where the model runs 10.4 % long; method.md, "Accuracy".
TEST(published_rates, a_second_cut_off_that_nothing_was_fitted_to) {
    const double rows[][2] = {{246.0, 5}, {180.0, 10}, {94.2, 30}, {55.9, 60}, {33.1, 120}};
    for (const auto& [amperes, minutes] : rows)
        EXPECT_NEAR(minutes_at(10.80 * volt, amperes) / minutes, 1.0, minutes == 10 ? 0.11 : 0.07)
            << amperes;
}

// The wells taken where a file is silent, on the rested table: minutes to 10.5 V of 100 Ah,
// computed outside this program (bisection on the closed form). On the level of a drawn AGM a fast
// draw meets the cut-off sooner. 25 A, a reserve, lies within the 170 to 200 min that exponents of
// 1.05 to 1.15 give; the sheet above, of which one exponent is 1.28, has 158.
TEST(published_rates, of_an_agm_pack_of_which_nothing_is_known) {
    scenario::Pack pack;
    pack.chemistry = scenario::Chemistry::agm;
    pack.capacity = 100.0 * ampere_hour;
    scenario::Assumptions taken;
    const PackModel model = pack_model(pack, "pack[0]", celsius(25.0), taken).value();
    const double rows[][2] = {{5, 1200.0}, {10, 560.35}, {20, 242.84}, {25, 182.18},
                              {50, 75.24}, {60, 60.34},  {100, 33.46}, {200, 10.246}};
    for (const auto& [amperes, minutes] : rows) {
        const Prepared one = prepare({.kinetics = model.kinetics,
                                      .open_circuit = &model.at_rest,
                                      .inner = model.inner,
                                      .stops = {.cut_off = 10.5 * volt}});
        const Advanced run = advance(one, Wells{}, amperes * ampere, 40.0 * hour);
        EXPECT_NEAR(run.time / minute / minutes, 1.0, 2e-4) << amperes;
    }
}

// n alike packs of 12.8 V and 6.4 milliohm, own leads 2 milliohm, shared path 0.5 milliohm, with 3
// kW and 6 kW at the wall (efficiencies 0.88 and 0.85): volts and amperes a pack, computed outside.
TEST(published_rates, sag_of_one_to_six_packs_under_an_inverter) {
    const std::array knots{Knot{StateOfCharge(0.0), 11.8 * volt},
                           Knot{StateOfCharge(1.0), 12.8 * volt}};
    const OpenCircuit line = OpenCircuit::through(knots).value();
    const struct {
        int packs;
        double watts, volts, amperes;
    } rows[] = {{1, 3409, 9.66, 353},  {2, 3409, 11.39, 150}, {3, 3409, 11.85, 96},
                {4, 3409, 12.07, 71},  {6, 3409, 12.27, 46},  {2, 7059, 9.19, 384},
                {3, 7059, 10.60, 222}, {4, 7059, 11.15, 158}, {6, 7059, 11.65, 101}};
    const auto bank = [&](int packs) {
        return prepare({.kinetics = {100.0 * ampere_hour, Share(1.0), Frequency{}},
                        .open_circuit = &line,
                        .inner = 0.0064 * ohm,
                        .path = (0.002 + packs * 0.0005) * ohm});
    };
    for (const auto& each : rows) {
        const OperatingPoint point =
            operating_point(bank(each.packs), Wells{}, each.watts / each.packs * watt);
        EXPECT_TRUE(point.possible);
        EXPECT_NEAR(point.voltage / volt, each.volts, 0.0051);
        EXPECT_NEAR(point.current / ampere, each.amperes, 0.51);
    }
    EXPECT_FALSE(operating_point(bank(1), Wells{}, 7059.0 * watt).possible);
}

// 12.8 V behind 8.5 milliohm, a third of 3333.333 W and of 6666.667 W each: computed outside.
TEST(published_rates, three_packs_and_the_largest_power_there_is) {
    const std::array knots{Knot{StateOfCharge(0.0), 11.8 * volt},
                           Knot{StateOfCharge(1.0), 12.8 * volt}};
    const OpenCircuit line = OpenCircuit::through(knots).value();
    const Prepared pack = prepare({.kinetics = {100.0 * ampere_hour, Share(1.0), Frequency{}},
                                   .open_circuit = &line,
                                   .inner = 0.0085 * ohm});
    const OperatingPoint third = operating_point(pack, Wells{}, 3333.333 / 3.0 * watt);
    EXPECT_NEAR(third.voltage / volt, 12.013872, 0.6e-6);
    EXPECT_NEAR(third.current / ampere, 92.4857, 0.6e-4);
    const OperatingPoint twice = operating_point(pack, Wells{}, 6666.667 / 3.0 * watt);
    EXPECT_NEAR(twice.voltage / volt, 11.097990, 0.6e-6);
    EXPECT_NEAR(twice.current / ampere, 200.2365, 0.6e-4);
    EXPECT_NEAR(*largest_power(pack, Wells{}) / watt, 4818.8235, 0.6e-4);
    EXPECT_NEAR(3.0 * *largest_power(pack, Wells{}) / watt, 14456.47, 0.006);
    const Advanced refused = advance(pack, Wells{}, 6666.667 * watt, 1.0 * hour);
    EXPECT_EQ(refused.ending, Ending::cannot_be_delivered);
    EXPECT_EQ(refused.time, Duration{});
    EXPECT_NEAR(refused.at_most / watt, 4818.8235, 0.6e-4);
}

}  // namespace
