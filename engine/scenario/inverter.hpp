// The inverter as its label and manual describe it.
#pragma once

#include <optional>
#include <vector>

#include "units/clock.hpp"
#include "units/quantities.hpp"

namespace scenario {

struct EfficiencyPoint {
    units::Share at;  // share of the continuous rating
    units::Efficiency is;
};

enum class Waveform { sine, quasi_square };

struct Inverter {
    units::Power continuous{};
    std::optional<units::ApparentPower> continuous_apparent;
    std::optional<units::Power> surge;
    std::optional<units::Duration> surge_lasts;
    std::optional<units::Power> idle;
    std::vector<EfficiencyPoint> efficiency;
    std::optional<units::Voltage> cutoff_voltage;
    std::optional<units::Voltage> restart_voltage;
    std::optional<units::Duration> cutoff_delay;
    std::optional<units::Voltage> output_voltage;
    std::optional<Waveform> waveform;
    std::optional<units::Resistance> cable_resistance;  // both conductors, bus to inverter
    std::vector<units::DailySpan> off;
};

}  // namespace scenario
