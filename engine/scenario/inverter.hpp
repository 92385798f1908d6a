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

// What it does when more is asked of it than it gives: hold its voltage until it trips, lower its
// voltage so that the current stays at its limit, or let its output fall with the bank's voltage.
enum class WhenOverloaded { trips, folds_back, sags };

// How it comes back after its low-voltage cut-off: somebody switches it off and on, or it does so
// itself at its restart voltage.
enum class Restart { by_hand, by_itself };

// So long it holds this share of its continuous rating.
struct HeldOverload {
    units::Share at;  // above 1
    units::Duration holds{};
};

struct Inverter {
    units::Power continuous{};
    std::optional<units::ApparentPower> continuous_apparent;
    std::optional<units::Power> surge;
    std::optional<units::Duration> surge_lasts;
    std::optional<units::Power> idle;
    std::vector<EfficiencyPoint> efficiency;
    std::optional<units::Voltage> cutoff_voltage;
    std::optional<units::Voltage> restart_voltage;
    std::optional<Restart> restart;
    std::optional<units::Duration> cutoff_delay;
    std::optional<units::Voltage> output_voltage;
    std::optional<Waveform> waveform;
    std::optional<units::Resistance> cable_resistance;  // both conductors, bus to inverter
    std::vector<units::DailySpan> off;
    std::vector<HeldOverload> overload;  // between the continuous rating and the surge
    std::optional<WhenOverloaded> when_overloaded;
    std::optional<units::Temperature> case_temperature;  // at its hottest
    std::optional<units::Power> search_threshold;        // in search mode: what wakes it
};

}  // namespace scenario
