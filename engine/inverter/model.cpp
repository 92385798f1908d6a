#include "inverter/model.hpp"

#include <algorithm>
#include <cassert>
#include <cmath>

#include "units/said.hpp"
#include "units/size_said.hpp"

namespace inverter {

namespace {

using units::ohm;
using units::second;
using units::volt;
using units::watt;
using words::Said;
using words::said;

// Low-voltage values of a 12 V inverter; a 24 V one has twice these.
// Cut-off: manuals print 10.0 to 11.0 V [Inverter manuals]. Restart: ours, among the pairs that
// manuals print: 9.3 and 10.9 V, 11.6 and 12.8 V, "at least 1 V above".
constexpr double usual_cutoff = 10.5;
constexpr double restart_above_cutoff = 1.5;

// 8 ft of 2/0 AWG copper, 0.0967 ohm/kft [NEC] ch. 9 table 8, and 0.4 milliohm of joints.
constexpr units::Resistance usual_cable = 1.17e-3 * ohm;

// How many 12 V steps the bank has: 12.8 V is one, 24 V and 25.6 V are two.
double steps_of_twelve(units::Voltage bus) {
    return std::max(1.0, std::round(bus / (12.8 * volt)));
}

void must_be_above_zero(bool holds, const char* where, const Said& remedy, units::Errors& errors) {
    if (!holds) {
        errors.push_back({where, said<"not above zero">(), remedy});
    }
}

units::Errors unusable(const scenario::Inverter& described) {
    units::Errors errors;
    must_be_above_zero(described.continuous > 0.0 * watt, "inverter.continuous",
                       said<"give the continuous rating, such as 2400 W">(), errors);
    must_be_above_zero(
        described.continuous_apparent.value_or(units::volt_ampere) > units::ApparentPower(),
        "inverter.continuous_apparent", said<"give a rating such as 2400 VA">(), errors);
    must_be_above_zero(described.output_voltage.value_or(volt) > 0.0 * volt,
                       "inverter.output_voltage",
                       said<"give the outlet's voltage, such as 120 V">(), errors);
    must_be_above_zero(described.cutoff_voltage.value_or(volt) > 0.0 * volt,
                       "inverter.cutoff_voltage", said<"give a voltage such as 10.5 V">(), errors);
    if (described.cutoff_delay.value_or(second) < 0.0 * second) {
        errors.push_back({"inverter.cutoff_delay", said<"below zero">(),
                          said<"give a time such as {example}">("1 s")});
    }
    if (described.cable_resistance.value_or(ohm) < 0.0 * ohm) {
        errors.push_back({"inverter.cable_resistance", said<"below zero">(),
                          said<"give a resistance such as {example}">("1.2 mohm")});
    }
    return errors;
}

class Defaults {
  public:
    explicit Defaults(scenario::Assumptions& assumed) : assumed_(assumed) {}

    template <class T>
    T take(const std::optional<T>& stated, T otherwise, const char* where, Said text,
           Said source = said<"common practice, no source">()) {
        if (!stated) {
            assumed_.push_back({where, std::move(text), std::move(source)});
        }
        return stated.value_or(otherwise);
    }

  private:
    scenario::Assumptions& assumed_;
};

void take_low_voltage(Model& model, const scenario::Inverter& described, units::Voltage bus,
                      Defaults& defaults) {
    const double steps = steps_of_twelve(bus);
    const units::Voltage cutoff = steps * usual_cutoff * volt;
    model.cutoff_voltage = defaults.take(
        described.cutoff_voltage, cutoff, "inverter.cutoff_voltage",
        said<"switches off below {voltage} at its terminals; manuals print {usual}">(
            units::amount(cutoff, 4),
            units::between<units::Voltage>(steps * 10.0 * volt, steps * 11.0 * volt, 4)),
        said<"[Inverter manuals] low-voltage tables">());
    const units::Voltage restart = model.cutoff_voltage + steps * restart_above_cutoff * volt;
    model.restart_voltage = defaults.take(
        described.restart_voltage, restart, "inverter.restart_voltage",
        said<"starts again at {voltage}; manuals print {usual} more than the "
             "cut-off">(units::amount(restart, 4),
                        units::between<units::Voltage>(steps * 1.0 * volt, steps * 2.5 * volt, 4)),
        said<"ours, among the pairs of [Inverter manuals]">());
    model.restart = defaults.take(
        described.restart, scenario::Restart::by_hand, "inverter.restart",
        said<"after its low-voltage cut-off somebody switches it off and on by hand, when the "
             "loads next change and after 5 min at the earliest; with restart = \"by itself\" it "
             "waits for its restart voltage">());
    model.cutoff_delay =
        defaults.take(described.cutoff_delay, 0.0 * second, "inverter.cutoff_delay",
                      said<"switches off at once when the voltage is too low">());
}

// 1 to 8 W, never more than awake: common practice, no source.
constexpr units::Power usual_asleep = 4.0 * watt;

void take_search_mode(Model& model, const scenario::Inverter& described,
                      scenario::Assumptions& assumed) {
    if (!described.search_threshold) return;
    model.asleep = std::min(usual_asleep, model.losses.idle);
    assumed.push_back({"inverter.search_threshold",
                       said<"takes {power} while it sleeps in search mode, 1 to 8 W">(model.asleep),
                       said<"common practice, no source">()});
}

void take_idle_range(Model& model, bool idle_is_stated, std::size_t points) {
    model.idle_low = model.losses.idle;
    model.idle_high = model.losses.idle;
    if (!idle_is_stated && points < 3) {
        // 10 to 60 W for a usual 30 W: common practice, no source.
        model.idle_low = model.losses.idle / 3.0;
        model.idle_high = 2.0 * model.losses.idle;
    }
}

}  // namespace

units::Result<Model> model_of(const scenario::Inverter& described, units::Voltage bus,
                              scenario::Assumptions& assumed) {
    units::Errors errors = unusable(described);
    if (!errors.empty()) {
        return units::fail(std::move(errors));
    }
    const units::Result<Losses> losses =
        fit_losses(described.continuous, described.idle, described.efficiency, assumed);
    if (!losses) {
        return tl::unexpected(losses.error());
    }
    Defaults defaults(assumed);
    Model model{.continuous = described.continuous, .losses = *losses};
    model.continuous_apparent =
        defaults.take(described.continuous_apparent, units::ApparentPower(described.continuous),
                      "inverter.continuous_apparent",
                      said<"carries {power}, the same number as its watts">(
                          units::amount(units::ApparentPower(described.continuous), 4)));
    take_idle_range(model, described.idle.has_value(), described.efficiency.size());
    take_search_mode(model, described, assumed);
    take_low_voltage(model, described, bus, defaults);
    model.output_voltage = defaults.take(described.output_voltage, 120.0 * volt,
                                         "inverter.output_voltage", said<"gives 120 V at 60 Hz">());
    model.waveform = defaults.take(described.waveform, scenario::Waveform::sine,
                                   "inverter.waveform", said<"gives a sine wave">());
    model.cable_resistance = defaults.take(
        described.cable_resistance, usual_cable, "inverter.cable_resistance",
        said<"{resistance}, as of {length} of {size} copper both ways together and its joints">(
            usual_cable, units::amount(8.0 * 0.3048 * units::metre, 2),
            units::amount(units::WireSize(units::AmericanGauge{-1}))),
        said<"[NEC] chapter 9 table 8; joints common practice, no source">());
    if (model.restart_voltage <= model.cutoff_voltage) {
        return units::fail(
            {"inverter.restart_voltage",
             said<"{voltage}, not above the cut-off of {cutoff}">(
                 units::amount(model.restart_voltage, 4), units::amount(model.cutoff_voltage, 4)),
             said<"give a voltage above the cut-off, such as 12.5 V for 12 V">()});
    }
    return model;
}

Model with_idle(Model model, units::Power idle) {
    assert(idle >= 0.0 * watt);
    model.losses.idle = idle;
    model.asleep = std::min(model.asleep, idle);
    return model;
}

units::ApparentPower apparent(units::Power real, units::ReactivePower reactive) {
    return units::ApparentPower(std::hypot(real / watt, reactive.amount() / watt) * watt);
}

units::Power dc_power(const Model& model, units::Power real, units::ApparentPower apparent) {
    assert(real >= 0.0 * watt);
    return real + loss(model.losses, apparent);
}

units::Power loss(const Model& model, units::ApparentPower apparent) {
    return loss(model.losses, apparent);
}

units::Efficiency efficiency(const Model& model, units::Power real, units::ApparentPower apparent) {
    if (real == 0.0 * watt) {
        return units::Efficiency(0.0);
    }
    return units::Efficiency(real / dc_power(model, real, apparent));
}

PeakEfficiency peak_efficiency(const Model& model) {
    const double idle = model.losses.idle / model.losses.rating;
    const double quadratic = model.losses.quadratic;
    // method.md (2); without a quadratic part the efficiency only rises.
    const double share = idle < quadratic ? std::sqrt(idle / quadratic) : 1.0;
    const double loss_over_load = (share > 0.0 ? idle / share : 0.0) + quadratic * share;
    return {.is = units::Efficiency(1.0 / (1.0 + model.losses.linear + loss_over_load)),
            .at = share * model.losses.rating};
}

bool carries(const Model& model, units::Power real, units::ApparentPower apparent) {
    return real <= model.continuous && apparent <= model.continuous_apparent;
}

bool runs_at(const Model& model, units::Voltage terminals, bool was_running) {
    return terminals >= (was_running ? model.cutoff_voltage : model.restart_voltage);
}

}  // namespace inverter
