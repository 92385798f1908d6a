#include "checks/direct_side.hpp"

#include <algorithm>
#include <cmath>

#include <fmt/format.h>

#include "battery/pack_model.hpp"

namespace checks {

using namespace units;

namespace {

// A board without stated pulses trips at 2 to 3 times its rating after 0.5 to 1.5 s: [BMS boards].
constexpr double surely_carried = 2.0;
constexpr double perhaps_carried = 3.0;
constexpr Duration soonest_trip = 0.5 * second;
constexpr Duration latest_trip = 1.5 * second;

// A pack whose resistance nobody measured: common practice, no source.
constexpr double least_of_typical = 0.75;
constexpr double most_of_typical = 1.5;

Range<Resistance> path_of(const scenario::Pack& pack, const battery::PackModel& model) {
    if (pack.resistance) return exactly(Resistance(model.inner + model.lead));
    return spanning<Resistance>(least_of_typical * model.inner + model.lead,
                                model.inner + model.lead,
                                most_of_typical * model.inner + model.lead);
}

Branch branch_of(const scenario::Pack& pack, const battery::PackModel& model,
                 std::optional<StateOfCharge> charge) {
    const auto wells = charge ? battery::rested(model.kinetics, *charge) : model.at_start;
    return {.name = pack.name,
            .emf = model.open_circuit.voltage(battery::available_fill(model.kinetics, wells)),
            .path = path_of(pack, model),
            .count = pack.count,
            .limits = {.continuous = model.current_limit, .pulse = model.pulse},
            .fuse = pack.fuse};
}

void note_uncertain_resistance(const scenario::Pack& pack, const std::string& where, Bank& bank) {
    if (pack.resistance) return;
    bank.assumptions.push_back(
        {where + ".resistance",
         fmt::format("between {:.2g} and {:.2g} times what is typical while a motor starts",
                     least_of_typical, most_of_typical),
         "common practice, no source"});
}

void note_short_times(const scenario::Pack& pack, const battery::PackModel& model,
                      const std::string& where, Bank& bank) {
    if (!pack.pulse.empty() || !model.current_limit) return;
    bank.assumptions.push_back(
        {where + ".pulse",
         fmt::format("its protection surely lets {:.0f} A through, and perhaps {:.0f} A for 0.5 s "
                     "or {:.0f} A for 1.5 s",
                     *model.current_limit / ampere, surely_carried * *model.current_limit / ampere,
                     perhaps_carried * *model.current_limit / ampere),
         "[BMS boards]"});
}

}  // namespace

Ends<std::optional<Current>> allowed_for(const TimedLimits& limits, Duration time) {
    // As no limit is below zero, that stands for none.
    Current most = limits.continuous.value_or(-1.0 * ampere);
    for (const auto& pulse : limits.pulse)
        if (pulse.lasts >= time) most = std::max(most, pulse.current);
    std::optional<Current> sure;
    if (most >= Current{}) sure = most;
    if (!limits.pulse.empty()) {
        // Longer than every stated pulse, and nothing is said of continuous current: the smallest
        // pulse still bounds it.
        if (!sure)
            sure =
                std::ranges::min_element(limits.pulse, {}, &scenario::PulseLimit::current)->current;
        return exactly(sure);
    }
    if (!sure) return {};
    return {sure, time <= soonest_trip ? surely_carried * *sure : *sure,
            time <= latest_trip ? perhaps_carried * *sure : *sure};
}

int packs_of(const DirectSource& source) {
    int packs = 0;
    for (const auto& branch : source.branches)
        packs += branch.count;
    return packs;
}

Equivalent equivalent(const DirectSource& source, End end) {
    double conductance = 0.0;
    double driven = 0.0;
    for (const auto& branch : source.branches) {
        // A branch without resistance would carry it all; a nano-ohm stands for it.
        const double ohms = std::max<double>(at(branch.path, end) / ohm, 1e-9);
        conductance += branch.count / ohms;
        driven += branch.count * (branch.emf / volt) / ohms;
    }
    if (!(conductance > 0.0)) return {.shared = source.shared};
    return {.emf = driven / conductance * volt,
            .branches = 1.0 / conductance * ohm,
            .shared = source.shared};
}

DirectPoint at_power(const Equivalent& source, Power power) {
    return at_power_and_current(source, power, Current{});
}

DirectPoint at_power_and_current(const Equivalent& source, Power power, Current current) {
    const double inner = source.branches / ohm;
    const double r = inner + source.shared / ohm;
    const double e = (source.emf - current * source.branches) / volt;
    const double p = power / watt;
    const double under_root = e * e - 4.0 * r * p;
    DirectPoint point{.possible = e > 0.0 && under_root >= 0.0,
                      .at_most = r > 0.0 ? e * e / (4.0 * r) * watt : Power{}};
    const double v = e > 0.0 ? 0.5 * (e + std::sqrt(std::max(0.0, under_root))) : 0.0;
    const double through_cable = v > 0.0 ? (point.possible ? p / v : 0.5 * e / r) : 0.0;
    point.voltage = v * volt;
    point.current = through_cable * ampere + current;
    point.bus = source.emf - point.current * source.branches;
    return point;
}

Current of_one_pack(const DirectSource& source, const Branch& branch, End end, Voltage bus) {
    const Resistance path = std::max(at(branch.path, end), 1e-9 * ohm);
    const double more = packs_of(source) > 1 ? source.imbalance.value() : 1.0;
    return more * (branch.emf - bus) / path;
}

Result<Bank> bank_of(const std::vector<scenario::Pack>& packs, Temperature temperature,
                     std::optional<StateOfCharge> charge) {
    Bank bank;
    Errors errors;
    Charge held{};
    Charge whole{};
    for (std::size_t i = 0; i < packs.size(); ++i) {
        const auto& pack = packs[i];
        if (pack.count < 1) continue;
        const auto where = fmt::format("pack[{}]", i);
        auto model = battery::pack_model(pack, where, temperature, bank.assumptions);
        if (!model) {
            errors.insert(errors.end(), model.error().begin(), model.error().end());
            continue;
        }
        if (pack.chemistry != packs.front().chemistry)
            errors.push_back({.where = where + ".chemistry",
                              .found = "packs of two chemistries on one bus",
                              .remedy = "ask of the packs of one chemistry at a time"});
        const auto fill = charge.value_or(pack.charge.value_or(StateOfCharge(1.0)));
        held += pack.count * fill.value() * model->capacity;
        whole += static_cast<double>(pack.count) * model->capacity;
        bank.nominal = model->nominal;
        bank.source.branches.push_back(branch_of(pack, *model, charge));
        note_uncertain_resistance(pack, where, bank);
        note_short_times(pack, *model, where, bank);
    }
    if (bank.source.branches.empty() && errors.empty())
        errors.push_back({.where = "pack",
                          .found = "there is no pack",
                          .remedy = "add a [[pack]] table with its chemistry and capacity"});
    if (!errors.empty()) return fail(std::move(errors));
    bank.charge = StateOfCharge(held / whole);
    if (packs_of(bank.source) > 1)
        bank.assumptions.push_back(
            {"pack", "the pack that carries most carries 1.15 times the mean of all (1.0 to 1.3)",
             "common practice, no source"});
    return bank;
}

}  // namespace checks
