// What the source does to its voltage while a motor starts. A source is a function, so that
// whoever knows the inverter and the bank says how they give way. See method.md, "Source".
#pragma once

#include <functional>
#include <optional>

#include "units/quantities.hpp"

namespace motor {

// The motor at one moment, as what it would draw at its rated voltage: current goes with the
// voltage, power with its square.
struct Drawn {
    units::Voltage rated_voltage{};
    units::Current current{};
    units::PowerFactor power_factor;
};

[[nodiscard]] units::Current current_at(const Drawn& motor, units::Voltage actual);
[[nodiscard]] units::Power real_power_at(const Drawn& motor, units::Voltage actual);

// The voltage at the motor's terminals, 0 V or more, while it is drawn on so.
using Source = std::function<units::Voltage(const Drawn&)>;

// Stiff until it trips: whoever calls compares the current with the limits.
[[nodiscard]] Source holding(units::Voltage voltage);

// The inverter lowers its voltage so far that the whole current stays at its limit, method.md (8).
//   others   current of what else is on, at the nominal voltage; falls with it
[[nodiscard]] Source folding_back(units::Voltage nominal, units::Current limit,
                                  units::Current others);

// The output cannot exceed the bank's voltage times a ratio, method.md (9).
//   ratio                 output over direct voltage where it begins to give way
//   others                real power of what else is on, held whatever the voltage
//   direct_voltage_under  of the real power on the output side, absent where the bank collapses;
//                         falls as the power grows
[[nodiscard]] Source limited_by_direct_voltage(
    units::Voltage nominal, double ratio, units::Power others,
    std::function<std::optional<units::Voltage>(units::Power)> direct_voltage_under);

// Behind a series soft-start device that lets this share of the voltage through.
[[nodiscard]] Source softened(Source source, units::Share let_through);

}  // namespace motor
