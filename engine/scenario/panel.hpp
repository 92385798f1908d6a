// Portable panels and the controller between them and the battery.
#pragma once

#include <optional>
#include <vector>

#include "units/clock.hpp"
#include "units/quantities.hpp"

namespace scenario {

enum class Placement { flat, fixed, aimed };

struct Aim {
    units::Duration at;  // local standard time of day from which it holds
    units::Angle tilt;
    units::Angle azimuth;
};

struct ShadedHours {
    units::DailySpan hours;
    units::Share shaded;
};

struct Panel {
    int count = 1;
    units::Power power{};  // standard test conditions, each
    Placement placement = Placement::flat;
    std::optional<units::Angle> tilt;     // from horizontal
    std::optional<units::Angle> azimuth;  // from north, clockwise
    std::vector<Aim> aims;
    std::vector<units::DailySpan> out;  // hours the panels stand outside; empty: always
    std::vector<ShadedHours> shade;
    std::vector<int> covered_days;    // days of the outage under snow or stowed, 1 is the first
    std::optional<bool> brushed_off;  // snow is taken off after each fall
    std::optional<units::Voltage> open_circuit_voltage;
    std::optional<units::Current> short_circuit_current;
    std::optional<units::Voltage> peak_power_voltage;
    std::optional<units::Current> peak_power_current;
    std::optional<units::Temperature> nominal_cell_temperature;
    std::optional<units::Share> power_lost_per_kelvin;  // 0.4 % is 0.004
    std::optional<units::Efficiency> derating;  // soiling, wiring, tolerance, mismatch together
    std::optional<int> in_series;
    std::optional<units::Mass> weight;
    std::optional<units::Price> price;
};

enum class ControllerKind { mppt, pwm };

struct ChargeController {
    ControllerKind kind = ControllerKind::mppt;
    std::optional<units::Power> input_limit;
    std::optional<units::Current> output_limit;
    std::optional<units::Voltage> voltage_limit;  // open-circuit voltage it withstands
    std::optional<units::Efficiency> efficiency;
};

}  // namespace scenario
