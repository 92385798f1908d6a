// A single-phase induction motor as a curve of torque and current over speed.
// See method.md, "Torque and current".
#pragma once

#include <optional>

#include "motor/kind.hpp"
#include "units/quantities.hpp"

namespace motor {

inline constexpr units::Torque newton_metre = units::Torque::from_value(1.0);
inline constexpr units::AngularVelocity radian_per_second = units::AngularVelocity::from_value(1.0);
inline constexpr units::Inertia kilogram_square_metre = units::Inertia::from_value(1.0);

[[nodiscard]] constexpr units::AngularVelocity per_minute(double revolutions) {
    return revolutions * 6.28318530717958647692 / 60.0 * radian_per_second;
}

// Share of the synchronous speed; 0 at rest.
using SpeedShare = units::Fraction<struct SpeedShareMeaning>;

struct InductionMotor {
    units::AngularVelocity synchronous_speed{};  // at the supply's frequency
    Slip full_load_slip;                         // above 0, below 1
    units::Torque full_load_torque{};
    Multiple locked_torque;             // of full-load torque
    Multiple breakdown_torque;          // of full-load torque, above 1
    std::optional<SpeedShare> cut_out;  // where the start winding opens; absent: it stays
    units::Inertia inertia{};           // of everything that turns, at the shaft
    units::Voltage rated_voltage{};
    units::Current locked_current{};   // at rated voltage
    units::Current running_current{};  // at rated voltage and full load
    units::PowerFactor locked_power_factor;
    units::PowerFactor running_power_factor;
};

// Where the Kloss curve has its peak, method.md (5); source [Pillai], [Dubey].
[[nodiscard]] Slip breakdown_slip(const InductionMotor& motor);

// Torque at rated voltage with the start winding in or out; goes with the square of the voltage.
[[nodiscard]] units::Torque torque_at(const InductionMotor& motor, Slip slip, bool start_winding);

// Whether the start winding is in at this slip while the motor speeds up.
[[nodiscard]] bool start_winding_is_in(const InductionMotor& motor, Slip slip);

// Current at rated voltage, method.md (7); never below the running current.
[[nodiscard]] units::Current current_at(const InductionMotor& motor, Slip slip);

// From the locked value at rest to the running one at full load, straight in speed: common
// practice, no source.
[[nodiscard]] units::PowerFactor power_factor_at(const InductionMotor& motor, Slip slip);

}  // namespace motor
