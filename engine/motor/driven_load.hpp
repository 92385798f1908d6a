// What the motor has to turn: torque against speed, and inertia.
#pragma once

#include "motor/induction_motor.hpp"
#include "scenario/load.hpp"
#include "units/quantities.hpp"
#include "units/range.hpp"
#include "words/said.hpp"

namespace motor {

// Shares of the motor's full-load torque: the first at any speed, the second at full-load speed
// and with the square of the speed below it.
struct LoadTorque {
    Multiple steady;
    Multiple with_speed_squared;
};

[[nodiscard]] units::Torque torque_of(const LoadTorque& load, const InductionMotor& motor,
                                      Slip slip);

enum class DrivenLoad {
    centrifugal_pump,
    fan,
    belt_blower,
    compressor_equalised,     // pressures level: at rest for 3 to 5 minutes
    compressor_against_head,  // switched off and on again
    piston_pump,
    saw_or_grinder,  // the blade free
    hoist,
    unstated,  // from a pump's curve to full torque at rest
};

// Low is the lightest.
struct DrivenLoadTraits {
    units::Ends<LoadTorque> torque;
    units::Range<units::Duration> inertia_constant;  // H: energy at synchronous speed over VA
};

[[nodiscard]] const DrivenLoadTraits& traits_of(DrivenLoad load);

// "fan on the shaft"
[[nodiscard]] words::Said in_words(DrivenLoad load);

// What a motor of this kind usually turns; common practice, no source.
[[nodiscard]] DrivenLoad usual_load(scenario::MotorKind kind);

}  // namespace motor
