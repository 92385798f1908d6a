// Whether what a plate says fits the voltage of the unit. One rule for the start and the outage.
#pragma once

#include <optional>
#include <string>

#include "scenario/load.hpp"
#include "units/quantities.hpp"
#include "units/result.hpp"

namespace motor {

// Within 10 % either way: [NEMA MG 1] 12.44 for motors.
[[nodiscard]] bool runs_from(units::Voltage rated, units::Voltage supply);

// The voltage on the plate of the motor, or of the whole appliance; absent where neither is told.
// A plate below 60 V on an alternating-current outlet is that of an adaptor's output and tells
// nothing of its input: common practice, no source.
[[nodiscard]] std::optional<units::Voltage> plate_voltage(const scenario::Load& load);

enum class Refused { motor, appliance };

// "a 230 V motor cannot be run from 120 V, however strong the inverter"
[[nodiscard]] units::Error voltage_refusal(std::string where, Refused what, units::Voltage rated,
                                           units::Voltage supply);

// What stands in the way of a load behind an inverter of this voltage: a plate more than 10 % off.
// Absent for loads at 12 V and USB, and where no plate tells the voltage.
//   takes    where, the load's key, such as "load[2]"
//   gives    an error at "<where>.motor.voltage" or "<where>.nameplate"
[[nodiscard]] std::optional<units::Error> refused_by_voltage(const scenario::Load& load,
                                                             const std::string& where,
                                                             units::Voltage supply);

}  // namespace motor
