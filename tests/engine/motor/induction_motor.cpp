#include "motor/induction_motor.hpp"

namespace {

using namespace motor;
using units::ampere;

// By hand, [Dubey]: b = 2.5 and a slip of 5 % at full load give a breakdown slip of 0.05 x (2.5 +
// sqrt(6.25 - 1)) = 0.239564.
InductionMotor worked() {
    return {.synchronous_speed = per_minute(1800.0),
            .full_load_slip = Slip(0.05),
            .full_load_torque = 2.0 * newton_metre,
            .locked_torque = Multiple(1.5),
            .breakdown_torque = Multiple(2.5),
            .cut_out = SpeedShare(0.75),
            .locked_current = 30.0 * ampere,
            .running_current = 5.0 * ampere,
            .locked_power_factor = units::PowerFactor(0.8),
            .running_power_factor = units::PowerFactor(0.6)};
}

TEST(induction_motor, the_peak_lies_where_the_formula_puts_it) {
    EXPECT_NEAR(breakdown_slip(worked()).value(), 0.239564, 1e-6);
    EXPECT_NEAR(torque_at(worked(), breakdown_slip(worked()), false) / newton_metre, 5.0, 1e-9);
}

// At full load 1, at rest 1.5 times 2 N m with the start winding in; without it the Kloss curve
// alone, 2.5 x 2/(1/0.239564 + 0.239564) = 1.13277 times.
TEST(induction_motor, its_curve_passes_the_points_of_its_plate) {
    EXPECT_NEAR(torque_at(worked(), Slip(0.05), false) / newton_metre, 2.0, 1e-9);
    EXPECT_NEAR(torque_at(worked(), Slip(1.0), true) / newton_metre, 3.0, 1e-9);
    EXPECT_NEAR(torque_at(worked(), Slip(1.0), false) / newton_metre, 2.0 * 1.13277, 1e-4);
}

TEST(induction_motor, the_start_winding_leaves_at_three_quarters_of_the_speed) {
    EXPECT_TRUE(start_winding_is_in(worked(), Slip(0.26)));
    EXPECT_FALSE(start_winding_is_in(worked(), Slip(0.24)));
    InductionMotor permanent = worked();
    permanent.cut_out.reset();
    EXPECT_TRUE(start_winding_is_in(permanent, Slip(0.05)));
}

// At the breakdown slip sqrt((1 + 0.0573908)/2) = 0.727114 of the locked current.
TEST(induction_motor, its_current_falls_from_the_locked_to_the_running_one) {
    EXPECT_NEAR(current_at(worked(), Slip(1.0)) / ampere, 30.0, 1e-9);
    EXPECT_NEAR(current_at(worked(), breakdown_slip(worked())) / ampere, 30.0 * 0.727114, 1e-4);
    EXPECT_NEAR(current_at(worked(), Slip(0.001)) / ampere, 5.0, 1e-9);
}

TEST(induction_motor, its_power_factor_goes_straight_from_rest_to_full_load) {
    EXPECT_NEAR(power_factor_at(worked(), Slip(1.0)).value(), 0.8, 1e-12);
    EXPECT_NEAR(power_factor_at(worked(), Slip(0.525)).value(), 0.7, 1e-12);
    EXPECT_NEAR(power_factor_at(worked(), Slip(0.05)).value(), 0.6, 1e-12);
}

// 1,800 turns a minute are 188.4956 radians a second.
TEST(induction_motor, turns_a_minute_are_radians_a_second) {
    EXPECT_NEAR(per_minute(1800.0) / radian_per_second, 188.4956, 1e-4);
}

}  // namespace
