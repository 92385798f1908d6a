// Start times that need no integration: for screening, and to hold the integral against.
#pragma once

#include "motor/induction_motor.hpp"
#include "units/quantities.hpp"

namespace motor {

// From slip `from` down to `to` at rated voltage on the Kloss curve alone, nothing driven and no
// start winding, method.md (11).
//   takes   0 < to < from <= 1
//   source  [Pillai], [Dubey], from memory
[[nodiscard]] units::Duration time_without_load(const InductionMotor& motor, Slip from, Slip to);

// By a constant torque left over; positive.
[[nodiscard]] units::Duration time_under(units::Torque accelerating, units::Inertia inertia,
                                         units::AngularVelocity gained);

// Share of the load's full torque that counts on the average over a run-up: 1 lift, 0.5 piston
// pump, 1/3 fan, 0 flywheel; source [Start time guide], from memory.
using MeanLoadShare = units::Fraction<struct MeanLoadShareMeaning>;

// 0.45 of locked and breakdown torque less the mean load, method.md (12). For screening: it
// averages the load torque and was 10 % off the integral in one case tried.
//   gives   zero where no torque is left over
//   source  [Start time guide], from memory
[[nodiscard]] units::Torque mean_accelerating_torque(units::Torque locked, units::Torque breakdown,
                                                     units::Torque load, MeanLoadShare share);

// An inertia behind a belt or gear, seen at the motor's shaft; source [E161].
[[nodiscard]] units::Inertia inertia_at_shaft(units::Inertia driven,
                                              units::AngularVelocity driven_speed,
                                              units::AngularVelocity shaft_speed);

}  // namespace motor
