#include "motor/induction_motor.hpp"

#include <algorithm>
#include <cmath>

namespace motor {

namespace {

// Share of the breakdown torque, method.md (4).
double kloss(double slip, double breakdown) {
    return 2.0 / (slip / breakdown + breakdown / slip);
}

}  // namespace

Slip breakdown_slip(const InductionMotor& motor) {
    const double b = motor.breakdown_torque.value();
    return Slip(motor.full_load_slip.value() * (b + std::sqrt(b * b - 1.0)));
}

units::Torque torque_at(const InductionMotor& motor, Slip slip, bool start_winding) {
    const double s = slip.value();
    const double s_k = breakdown_slip(motor).value();
    const double b = motor.breakdown_torque.value();
    double of_full_load = b * kloss(s, s_k);
    if (start_winding) {  // method.md (6)
        of_full_load += (motor.locked_torque.value() - b * kloss(1.0, s_k)) * s;
    }
    return of_full_load * motor.full_load_torque;
}

bool start_winding_is_in(const InductionMotor& motor, Slip slip) {
    return !motor.cut_out || slip.value() > 1.0 - motor.cut_out->value();
}

units::Current current_at(const InductionMotor& motor, Slip slip) {
    const double s_k = breakdown_slip(motor).value();
    const double turned = s_k / slip.value();
    const double of_locked = std::sqrt((1.0 + s_k * s_k) / (1.0 + turned * turned));
    return std::max(of_locked * motor.locked_current, motor.running_current);
}

units::PowerFactor power_factor_at(const InductionMotor& motor, Slip slip) {
    const double along =
        std::clamp((1.0 - slip.value()) / (1.0 - motor.full_load_slip.value()), 0.0, 1.0);
    const double locked = motor.locked_power_factor.value();
    return units::PowerFactor(locked + along * (motor.running_power_factor.value() - locked));
}

}  // namespace motor
