#include "motor/direct_current.hpp"

namespace {

using namespace motor;
using units::ampere;
using units::ohm;
using units::volt;

const Winch winch{.at_rated_pull = 480.0 * ampere, .rated_pull = 9000.0 * pound_force};

TEST(direct_current, the_same_pull_takes_more_current_on_a_fuller_drum) {
    const auto first = current_at(winch, 4000.0 * pound_force, 1);
    const auto fourth = current_at(winch, 4000.0 * pound_force, 4);
    EXPECT_LT(first->likely(), fourth->likely());
    EXPECT_LT(first->low(), first->likely());
    EXPECT_LT(first->likely(), first->high());
}

TEST(direct_current, a_pull_beyond_the_rating_of_its_layer_is_refused) {
    EXPECT_TRUE(current_at(winch, 8900.0 * pound_force, 1));
    EXPECT_FALSE(current_at(winch, 8900.0 * pound_force, 2));
    EXPECT_FALSE(current_at(winch, -1.0 * newton, 1));
    EXPECT_FALSE(current_at(winch, 1.0 * newton, 0));
}

TEST(direct_current, a_stalled_winch_takes_more_than_at_its_rated_pull) {
    EXPECT_NEAR(stalled_current(winch) / ampere, 576.0, 1e-9);
}

TEST(direct_current, a_stalled_motor_is_limited_by_resistance_alone) {
    EXPECT_NEAR(stalled_current(12.8 * volt, 1.0 * volt, 0.005 * ohm, 0.015 * ohm) / ampere, 590.0,
                1e-9);
    EXPECT_EQ(stalled_current(0.5 * volt, 1.0 * volt, 0.005 * ohm, 0.015 * ohm), 0.0 * ampere);
}

TEST(direct_current, switching_on_a_pump_takes_some_times_its_rated_current) {
    const auto start = starting_current(5.0 * ampere);
    EXPECT_EQ(start.low(), 10.0 * ampere);
    EXPECT_EQ(start.high(), 30.0 * ampere);
}

}  // namespace
