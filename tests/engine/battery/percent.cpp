#include "battery/cell/percent.hpp"

namespace {

using namespace battery;
using namespace units;

constexpr Charge rated = 100.0 * ampere_hour;

Kinetics holding(double width, double per_hours) {
    Kinetics wells{.total = 1.0 * coulomb, .available = Share(width), .rate = per_hours * per_hour};
    wells.total = rated * (1.0 * coulomb / capacity_over(wells, 20.0 * hour));
    return wells;
}

TEST(percent, of_a_discharge_at_the_rated_current_ends_at_nothing) {
    const Kinetics wells = holding(0.43, 0.70);
    const Duration ends = *time_to_empty(wells, Wells{}, 5.0 * ampere);
    EXPECT_NEAR(ends / hour, 20.0, 1e-9);
    EXPECT_NEAR(charge_left(rated, after(wells, Wells{}, 5.0 * ampere, ends)).value(), 0.0, 1e-12);
}

// Worked by hand from (7) and (46): c 0.43, k 0.70/h, 20 h: k T = 14, E = e^-14,
// C/C_r = (1 - E + 0.43 (14 - 1 + E))/(14 x 0.43) = 6.59/6.02 = 1.094684.
TEST(percent, is_not_the_fill_of_the_wells_where_there_are_two) {
    const Kinetics wells = holding(0.43, 0.70);
    EXPECT_NEAR(wells.total / rated, 1.094684, 1e-6);
    EXPECT_NEAR(fill_with(wells, rated, StateOfCharge(0.5)).value(), 0.54325, 1e-5);
    EXPECT_NEAR(fill_with(wells, rated, StateOfCharge(0.0)).value(), 0.08649, 1e-5);
    EXPECT_NEAR(lowest_charge(wells, rated).value(), -0.0947, 1e-4);
}

TEST(percent, is_the_fill_where_there_is_one_well) {
    const Kinetics one{.total = rated, .available = Share(1.0), .rate = {}};
    EXPECT_NEAR(fill_with(one, rated, StateOfCharge(0.3)).value(), 0.3, 1e-15);
    EXPECT_EQ(lowest_charge(one, rated), StateOfCharge(0.0));
}

TEST(percent, that_goes_in_comes_out) {
    const Kinetics wells = holding(0.63, 0.50);
    for (double charge = 0.0; charge <= 1.0; charge += 0.01) {
        const Wells at = rested_with(rated, StateOfCharge(charge));
        EXPECT_NEAR(charge_left(rated, at).value(), charge, 1e-15);
        EXPECT_NEAR(fill_with(wells, rated, StateOfCharge(charge)).value(),
                    available_fill(wells, at).value(), 1e-15);
        EXPECT_NEAR(charge_at_fill(wells, rated, available_fill(wells, at)).value(), charge, 1e-15);
    }
}

TEST(percent, shown_to_people_lies_between_nothing_and_full) {
    EXPECT_EQ(shown(StateOfCharge(-0.05)), StateOfCharge(0.0));
    EXPECT_EQ(shown(StateOfCharge(0.4)), StateOfCharge(0.4));
    EXPECT_EQ(shown(StateOfCharge(1.0 + 1e-15)), StateOfCharge(1.0));
}

}  // namespace
