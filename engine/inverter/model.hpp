// The inverter as the rest of the engine uses it: what it takes, what it carries, when it stops.
#pragma once

#include "inverter/losses.hpp"
#include "scenario/assumption.hpp"
#include "scenario/inverter.hpp"
#include "units/quantities.hpp"
#include "units/result.hpp"

namespace inverter {

struct Model {
    units::Power continuous{};
    units::ApparentPower continuous_apparent{};
    Losses losses;
    units::Power idle_low{};  // equal to losses.idle when the file states it
    units::Power idle_high{};
    units::Power asleep{};  // drawn in search mode while nothing wakes it; 0 without such a mode
    units::Voltage cutoff_voltage{};   // at its own terminals, under load
    units::Voltage restart_voltage{};  // above cutoff_voltage
    scenario::Restart restart = scenario::Restart::by_hand;
    units::Duration cutoff_delay{};
    units::Voltage output_voltage{};
    scenario::Waveform waveform = scenario::Waveform::sine;
    units::Resistance cable_resistance{};  // both conductors and their joints, bus to inverter
};

// The model of what the file describes, for a bank of the nominal voltage `bus` (12.8 V, 24 V …).
//   fails      at each "inverter.…" key whose value cannot be used; see fit_losses for the losses
//   assumes    one entry in `assumed` for each default that was taken
//   source     method.md, "Where the file is silent"
[[nodiscard]] units::Result<Model> model_of(const scenario::Inverter& described, units::Voltage bus,
                                            scenario::Assumptions& assumed);

// The same inverter with another idle draw, for the hungry and the frugal end of a plan.
[[nodiscard]] Model with_idle(Model model, units::Power idle);

//   gives      square root of P^2 + Q^2
[[nodiscard]] units::ApparentPower apparent(units::Power real, units::ReactivePower reactive);

// Drawn at its direct-current terminals while it is switched on; idle when nothing is plugged in.
//   takes      real at least 0 and at most apparent; method.md (1)
[[nodiscard]] units::Power dc_power(const Model& model, units::Power real,
                                    units::ApparentPower apparent);
[[nodiscard]] units::Power loss(const Model& model, units::ApparentPower apparent);

//   gives      0 with nothing plugged in
[[nodiscard]] units::Efficiency efficiency(const Model& model, units::Power real,
                                           units::ApparentPower apparent);

struct PeakEfficiency {
    units::Efficiency is;
    units::Power at{};  // at power factor 1, at most the continuous rating
};
[[nodiscard]] PeakEfficiency peak_efficiency(const Model& model);

// Within both continuous ratings. Watts and volt-amperes are limited apart.
[[nodiscard]] bool carries(const Model& model, units::Power real, units::ApparentPower apparent);

// Whether it supplies at this terminal voltage. Once off, it waits for restart_voltage.
[[nodiscard]] bool runs_at(const Model& model, units::Voltage terminals, bool was_running);

}  // namespace inverter
