#include "battery/cell/freezing.hpp"

#include <gtest/gtest.h>

namespace {

using namespace battery;
using namespace units;
using scenario::Chemistry;

double freezes(Chemistry chemistry, double charge) {
    return in_celsius(*freezing_point(chemistry, StateOfCharge(charge)));
}

// Worked by hand from the rested volts of the makers' tables and the printed rows of gravity, one
// decimal.
TEST(freezing, the_less_is_left_the_sooner) {
    const struct {
        Chemistry chemistry;
        double charges[7], degrees[7];
    } rows[] = {{Chemistry::flooded,
                 {.60, .50, .40, .30, .20, .10, .0},
                 {-25.5, -20.1, -14.7, -11.0, -7.0, -4.8, -2.7}},
                {Chemistry::agm,
                 {.60, .50, .40, .30, .20, .10, .0},
                 {-45.0, -35.0, -26.0, -20.4, -14.7, -11.9, -8.0}},
                {Chemistry::gel,
                 {.60, .50, .40, .30, .20, .10, .0},
                 {-38.0, -29.0, -24.0, -20.1, -16.2, -10.6, -6.2}}};
    for (const auto& row : rows)
        for (int i = 0; i < 7; ++i)
            EXPECT_NEAR(freezes(row.chemistry, row.charges[i]), row.degrees[i],
                        row.degrees[i] < -21.0 ? 0.6 : 0.06)
                << row.charges[i];
    EXPECT_NEAR(freezes(Chemistry::flooded, 1.0), -66.0, 0.6);
}

// Army, navy and a maker's manual: 1.100 freezes at 18 or 19 degF, 1.200 at -16 or -17.
TEST(freezing, at_a_temperature_a_pack_must_not_fall_below_a_charge) {
    const double rows[][2] = {{-10, 27.6}, {-12, 32.8}, {-15, 40.8}, {-20, 49.8}};
    for (const auto& [degrees, percent] : rows)
        EXPECT_NEAR(100.0 * freezes_below(Chemistry::flooded, celsius(degrees))->value(), percent,
                    0.06);
    EXPECT_FALSE(freezes_below(Chemistry::flooded, celsius(-1.0)).has_value());
}

TEST(freezing, lithium_has_no_acid) {
    EXPECT_FALSE(freezing_point(Chemistry::lifepo4, StateOfCharge(0.1)).has_value());
    EXPECT_FALSE(freezes_below(Chemistry::lifepo4, celsius(-40.0)).has_value());
}

}  // namespace
