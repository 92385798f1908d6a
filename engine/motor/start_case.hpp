// The motor of a plate as curves to start with, by the burden it puts on the unit.
#pragma once

#include <optional>
#include <string>

#include "motor/driven_load.hpp"
#include "motor/induction_motor.hpp"
#include "motor/locked_rotor.hpp"
#include "scenario/assumption.hpp"
#include "units/quantities.hpp"
#include "units/range.hpp"

namespace motor {

struct StartCase {
    InductionMotor motor;
    LoadTorque load;
};

struct StartCases {
    units::Ends<StartCase> burden;  // low: most torque, least to turn, least current
    scenario::Assumptions assumptions{};
};

struct Shaft {
    units::Power output{};  // at full load
    units::Frequency frequency = 60.0 * units::hertz;
    std::optional<units::AngularVelocity> full_load_speed{};
    std::optional<DrivenLoad> drives{};
};

// What is silent is taken from the motor's kind and the load's, and told.
//   holds for  kinds with a torque curve: absent for universal and electronically driven motors,
//              which have the start times of their kind
//   where      of the motor in the scenario, for the assumptions
[[nodiscard]] std::optional<StartCases> start_cases(const LockedRotor& locked, const Shaft& shaft,
                                                    const std::string& where);

// Rated output from the horsepower, or from the running power and the kind's efficiency.
//   gives  absent when neither is known
[[nodiscard]] std::optional<units::Power> shaft_output(const scenario::Motor& motor,
                                                       std::optional<units::Power> running_power);

}  // namespace motor
