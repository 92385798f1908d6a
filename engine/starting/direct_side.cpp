#include "starting/direct_side.hpp"

#include <algorithm>
#include <cmath>

#include "unit/limits.hpp"
#include "units/said.hpp"
#include "wiring/power_behind.hpp"

namespace starting {

using namespace units;
using words::said;

namespace {

// A board without stated pulses trips at 2 to 3 times its rating after 0.5 to 1.5 s: [BMS boards].
constexpr double surely_carried = 2.0;
constexpr double perhaps_carried = 3.0;
constexpr Duration soonest_trip = 0.5 * second;
constexpr Duration latest_trip = 1.5 * second;

// A pack whose resistance nobody measured: common practice, no source.
constexpr double least_of_typical = 0.75;
constexpr double most_of_typical = 1.5;

Range<Resistance> path_of(const unit::Packs& packs) {
    const Resistance inner = packs.inner.value;
    const Resistance lead = packs.lead.resistance.value;
    if (!packs.inner.assumed()) return exactly(Resistance(inner + lead));
    return spanning<Resistance>(least_of_typical * inner + lead, inner + lead,
                                most_of_typical * inner + lead);
}

std::optional<Current> bears(const unit::Limits& limits, unit::Limiter part) {
    const auto* limit = unit::find(limits, part);
    return limit == nullptr ? std::nullopt : std::optional(limit->most.value);
}

// The weaker of connector and switch.
std::optional<Current> weakest_contact(const unit::Limits& limits) {
    const auto plug = bears(limits, unit::Limiter::connector);
    const auto contact = bears(limits, unit::Limiter::contact);
    if (!plug || !contact) return plug ? plug : contact;
    return std::min(*plug, *contact);
}

Branch branch_of(const unit::Packs& packs, std::optional<StateOfCharge> charge) {
    const auto& model = *packs.model;
    const auto limits = unit::limits_of(packs, unit::Flow::out_of_pack);
    const auto wells = charge ? battery::rested_with(model.capacity, *charge) : model.at_start;
    return {
        .name = packs.name,
        .emf = model.open_circuit.voltage(battery::available_fill(model.kinetics, wells)),
        .path = path_of(packs),
        .count = packs.count,
        .limits = {.continuous = bears(limits, unit::Limiter::protection), .pulse = model.pulse},
        .fuse = bears(limits, unit::Limiter::fuse),
        .contact = weakest_contact(limits)};
}

void note_uncertain_resistance(const unit::Packs& packs, scenario::Assumptions& told) {
    if (!packs.inner.assumed()) return;
    told.push_back({packs.where + ".resistance",
                    said<"between {low} and {high} times what is typical while a motor starts">(
                        words::Number{.value = least_of_typical, .digits = 2},
                        words::Number{.value = most_of_typical, .digits = 2}),
                    said<"common practice, no source">()});
}

void note_short_times(const unit::Packs& packs, scenario::Assumptions& told) {
    const auto& model = *packs.model;
    if (!model.pulse.empty() || !model.current_limit) return;
    told.push_back(
        {packs.where + ".pulse",
         said<"its protection surely lets {surely} through, and perhaps {half_a_second} for 0.5 s "
              "or {longer} for 1.5 s">(amount_in(*model.current_limit, "A", 0),
                                       amount_in(surely_carried * *model.current_limit, "A", 0),
                                       amount_in(perhaps_carried * *model.current_limit, "A", 0)),
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
    point.voltage = v * volt;
    point.current =
        wiring::current_into(power, source.branches + source.shared, e * volt) + current;
    point.bus = source.emf - point.current * source.branches;
    return point;
}

Current of_one_pack(const DirectSource& source, const Branch& branch, End end, Voltage bus) {
    const Resistance path = std::max(at(branch.path, end), 1e-9 * ohm);
    const double more = packs_of(source) > 1 ? source.imbalance.value() : 1.0;
    return more * (branch.emf - bus) / path;
}

namespace {

void take_main_path(const unit::Unit& built, DirectSource& source) {
    if (!built.inverter) return;
    source.shared = built.main.resistance.value;
    const auto limits = unit::limits_of(built.main);
    source.main_fuse = bears(limits, unit::Limiter::fuse);
    source.main_contact = weakest_contact(limits);
}

// At each packs of another chemistry than the first.
Errors refuse_mixed_chemistries(const unit::Unit& built) {
    Errors errors;
    const unit::Packs* first = nullptr;
    for (const unit::Packs& packs : built.packs) {
        if (packs.count < 1) continue;
        if (first == nullptr) first = &packs;
        if (packs.model->chemistry != first->model->chemistry)
            errors.push_back({.where = packs.where + ".chemistry",
                              .found = said<"packs of two chemistries on one bus">(),
                              .remedy = said<"ask of the packs of one chemistry at a time">()});
    }
    return errors;
}

// What is left in all packs together, over what they hold.
StateOfCharge charge_of(const unit::Unit& built, std::optional<StateOfCharge> charge) {
    Charge held{};
    Charge whole{};
    for (const unit::Packs& packs : built.packs) {
        if (packs.count < 1) continue;
        const auto& model = *packs.model;
        const auto left =
            charge.value_or(battery::shown(battery::charge_left(model.capacity, model.at_start)));
        held += packs.count * left.value() * model.capacity;
        whole += static_cast<double>(packs.count) * model.capacity;
    }
    return StateOfCharge(held / whole);
}

scenario::Assumptions noted_of_packs(const unit::Unit& built) {
    std::vector<scenario::Assumptions> of_each;
    for (const unit::Packs& packs : built.packs) {
        if (packs.count < 1) continue;
        auto& told = of_each.emplace_back();
        note_uncertain_resistance(packs, told);
        note_short_times(packs, told);
    }
    return unit::told_once(of_each);
}

}  // namespace

Result<Bank> bank_of(const unit::Unit& built, std::optional<StateOfCharge> charge) {
    if (built.count() < 1)
        return fail({.where = "pack",
                     .found = said<"there is no pack">(),
                     .remedy = said<"add a [[pack]] table with its chemistry and capacity">()});
    if (Errors errors = refuse_mixed_chemistries(built); !errors.empty())
        return fail(std::move(errors));
    Bank bank{.assumptions = unit::assumptions_of(built), .nominal = built.nominal()};
    take_main_path(built, bank.source);
    for (const unit::Packs& packs : built.packs)
        if (packs.count > 0) bank.source.branches.push_back(branch_of(packs, charge));
    const auto noted = noted_of_packs(built);
    bank.assumptions.insert(bank.assumptions.end(), noted.begin(), noted.end());
    bank.charge = charge_of(built, charge);
    if (packs_of(bank.source) > 1)
        bank.assumptions.push_back(
            {"pack",
             said<"the pack that carries most carries 1.15 times the mean of all (1.0 to 1.3)">(),
             said<"common practice, no source">()});
    return bank;
}

}  // namespace starting
