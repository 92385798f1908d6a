// The time to speed of a motor that drives nothing, in closed form, to hold the integral against.
#pragma once

#include <cmath>

#include "motor/induction_motor.hpp"

// From slip `from` down to `to` at rated voltage on the Kloss curve alone, without a start winding:
// t = (tau/2) [(s1^2 - s2^2)/(2 s_k) + s_k ln(s1/s2)], tau = J omega_s/T_BD.
//   takes   0 < to < from <= 1
//   source  [Pillai], [Dubey], derived again from the Kloss curve
inline units::Duration time_without_load(const motor::InductionMotor& motor, motor::Slip from,
                                         motor::Slip to) {
    const double s_k = breakdown_slip(motor).value();
    const double s_1 = from.value();
    const double s_2 = to.value();
    const double breakdown =
        motor.breakdown_torque.value() * (motor.full_load_torque / motor::newton_metre);
    const double tau = (motor.inertia / motor::kilogram_square_metre) *
                       (motor.synchronous_speed / motor::radian_per_second) / breakdown;
    return 0.5 * tau * ((s_1 * s_1 - s_2 * s_2) / (2.0 * s_k) + s_k * std::log(s_1 / s_2)) *
           units::second;
}
