#include "support/start_without_load.hpp"

#include "motor/start.hpp"

namespace {

using namespace motor;
using units::ampere;
using units::second;
using units::volt;

TEST(start, the_integral_without_load_gives_the_same_time) {
    InductionMotor motor{.synchronous_speed = per_minute(3600.0),
                         .full_load_slip = Slip(0.05),
                         .full_load_torque = 1.0 * newton_metre,
                         .locked_torque = Multiple(0.0),
                         .breakdown_torque = Multiple(2.2),
                         .cut_out = {},
                         .inertia = 0.002 * kilogram_square_metre,
                         .rated_voltage = 115.0 * volt,
                         .locked_current = 30.0 * ampere,
                         .running_current = 6.0 * ampere,
                         .locked_power_factor = units::PowerFactor(0.8),
                         .running_power_factor = units::PowerFactor(0.7)};
    // Locked torque of the bare curve, so that the start winding adds nothing.
    motor.locked_torque = Multiple(torque_at(motor, Slip(1.0), false) / motor.full_load_torque);
    const auto closed = time_without_load(motor, Slip(1.0), breakdown_slip(motor));
    const Start found = start(motor, {}, holding(115.0 * volt));
    EXPECT_NEAR(*found.time_to_speed / closed, 1.0, 1e-7);
}

}  // namespace
