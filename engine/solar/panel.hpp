// What a photovoltaic panel gives in a given light and warmth.
#pragma once

#include "scenario/assumption.hpp"
#include "scenario/panel.hpp"
#include "units/quantities.hpp"

namespace solar {

using PerKelvin = units::Fraction<struct PerKelvinMeaning>;  // relative change a kelvin

// One panel, complete. The figures named "at test conditions" hold at 1000 W/m2 and cells at 25
// degrees Celsius.
struct PanelModel {
    units::Power rated_power = 100.0 * units::watt;  // at test conditions
    units::Voltage open_circuit_voltage = 21.6 * units::volt;
    units::Current short_circuit_current = 6.00 * units::ampere;
    units::Voltage peak_power_voltage = 18.0 * units::volt;
    units::Current peak_power_current = 5.56 * units::ampere;
    units::Temperature nominal_cell_temperature = units::celsius(45.0);
    PerKelvin power_coefficient{-0.0040};
    PerKelvin voltage_coefficient{-0.0030};
    PerKelvin current_coefficient{0.0005};
    units::Efficiency derating{0.904};  // soiling, wiring, tolerance, mismatch together
};

// The panel a scenario describes; a generic one, scaled by its power, where it is silent.
//   where  the key's beginning, such as "panel[0]"
[[nodiscard]] PanelModel panel_model(const scenario::Panel& panel, const std::string& where,
                                     scenario::Assumptions& assumptions);

// method.md (29). Flat on the ground without moving air behind, add flat_on_ground_warmer.
[[nodiscard]] units::Temperature cell_temperature(const PanelModel& panel, units::Irradiance light,
                                                  units::Temperature air);
inline constexpr units::TemperatureDifference flat_on_ground_warmer = 10.0 * units::kelvin;

// One panel at its best voltage, deratings included; never negative. method.md (30)
[[nodiscard]] units::Power peak_power(const PanelModel& panel, units::Irradiance light,
                                      units::Temperature cells);

// One panel held at a voltage, deratings included; 0 above its open-circuit voltage. (31), (32)
[[nodiscard]] units::Current current_at(const PanelModel& panel, units::Voltage voltage,
                                        units::Irradiance light, units::Temperature cells);

[[nodiscard]] units::Voltage open_circuit_voltage_at(const PanelModel& panel,
                                                     units::Temperature cells);

}  // namespace solar
