#include "motor/closed_form.hpp"

#include <algorithm>
#include <cmath>

namespace motor {

units::Duration time_without_load(const InductionMotor& motor, Slip from, Slip to) {
    const double s_k = breakdown_slip(motor).value();
    const double s_1 = from.value();
    const double s_2 = to.value();
    const units::Torque breakdown = motor.breakdown_torque.value() * motor.full_load_torque;
    const units::Duration unit = time_under(breakdown, motor.inertia, motor.synchronous_speed);
    return 0.5 * ((s_1 * s_1 - s_2 * s_2) / (2.0 * s_k) + s_k * std::log(s_1 / s_2)) * unit;
}

units::Duration time_under(units::Torque accelerating, units::Inertia inertia,
                           units::AngularVelocity gained) {
    return (inertia / kilogram_square_metre) * (gained / radian_per_second) /
           (accelerating / newton_metre) * units::second;
}

units::Torque mean_accelerating_torque(units::Torque locked, units::Torque breakdown,
                                       units::Torque load, MeanLoadShare share) {
    const units::Torque left = 0.45 * (locked + breakdown) - share.value() * load;
    return std::max(left, 0.0 * newton_metre);
}

units::Inertia inertia_at_shaft(units::Inertia driven, units::AngularVelocity driven_speed,
                                units::AngularVelocity shaft_speed) {
    const double ratio = driven_speed / shaft_speed;
    return ratio * ratio * driven;
}

}  // namespace motor
