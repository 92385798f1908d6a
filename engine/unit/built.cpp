#include "unit/built.hpp"

#include <algorithm>
#include <cmath>

#include <fmt/format.h>

#include "battery/cell/chemistry.hpp"
#include "battery/cell/two_well.hpp"
#include "unit/surroundings.hpp"
#include "unit/usual.hpp"
#include "units/said.hpp"

namespace unit {

using namespace units;
using scenario::Assumption;
using scenario::Assumptions;
using scenario::Scenario;
using words::said;

namespace {

// Packs are looked at half full, or as empty as the file says; common practice, no source.
constexpr StateOfCharge half_full = StateOfCharge(0.5);

// One pack of the file on its way to being built.
struct Draft {
    const Scenario& scenario;
    std::size_t index;

    [[nodiscard]] const scenario::Pack& pack() const { return scenario.packs[index]; }
    [[nodiscard]] const scenario::Pack& first() const { return scenario.packs.front(); }
    [[nodiscard]] std::string where() const { return fmt::format("pack[{}]", index); }
    template <class T>
    [[nodiscard]] Sayings<T> said(std::optional<T> scenario::Pack::*key) const {
        return of_key(pack().*key, first().*key, index == 0);
    }
};

Path lead_of(const Draft& draft, const Unit& unit, scenario::Findings& findings) {
    using scenario::Pack;
    return path_of({.scenario = draft.scenario,
                    .feeds = draft.pack().name,
                    .where = draft.where(),
                    .who = said<"pack {pack}">(draft.pack().name),
                    .resistance_key = "lead_resistance",
                    .conductors = unit.conductors,
                    .inside = unit.surroundings.inside},
                   {.resistance = draft.said(&Pack::lead_resistance),
                    .fuse = draft.said(&Pack::fuse),
                    .connector = draft.said(&Pack::connector)},
                   findings);
}

Path main_of(const Scenario& scenario, const Unit& unit, scenario::Findings& findings) {
    return path_of({.scenario = scenario,
                    .feeds = "inverter",
                    .where = "inverter",
                    .who = said<"inverter">(),
                    .resistance_key = "cable_resistance",
                    .conductors = unit.conductors,
                    .inside = unit.surroundings.inside},
                   {.resistance = {.key = scenario.inverter->cable_resistance}}, findings);
}

// At one temperature, behind its lead.
Result<battery::PackModel> model_of(const Draft& draft, const Path& lead, Temperature temperature,
                                    Assumptions& taken) {
    scenario::Pack pack = draft.pack();
    if (lead.resistance.origin == Origin::circuit) pack.lead_resistance = lead.resistance.value;
    return battery::pack_model(pack, draft.where(), temperature, taken);
}

std::optional<Packs> packs_of(const Draft& draft, const Unit& unit, const Warmth& warmth,
                              scenario::Findings& findings, Errors& errors) {
    const scenario::Pack& pack = draft.pack();
    Packs made{.index = draft.index,
               .name = pack.name,
               .where = draft.where(),
               .count = pack.count,
               .lead = lead_of(draft, unit, findings)};
    auto model = model_of(draft, made.lead, warmth.packs, made.taken);
    if (!model) {
        errors.insert(errors.end(), model.error().begin(), model.error().end());
        return std::nullopt;
    }
    made.lead.resistance.value = model->lead;
    made.inner = {model->inner, Origin::chemistry};
    if (pack.resistance) {
        const auto said = known(draft.said(&scenario::Pack::resistance));
        made.inner.origin = said->origin;
    }
    const auto from = [&](std::optional<Current> scenario::Pack::*key) {
        const auto said = known(draft.said(key));
        return said ? said->origin : Origin::chemistry;
    };
    made.current_limit_from = from(&scenario::Pack::current_limit);
    made.charge_limit_from = from(&scenario::Pack::charge_limit);
    made.model = std::make_shared<const battery::PackModel>(*std::move(model));
    for (const auto& day : warmth.days) {
        Assumptions told_already;
        auto of_day = model_of(draft, made.lead, day.temperature, told_already);
        if (!of_day) {  // one day tells why for all of them
            errors.insert(errors.end(), of_day.error().begin(), of_day.error().end());
            break;
        }
        made.days.push_back(
            {day.from, std::make_shared<const battery::PackModel>(*std::move(of_day))});
    }
    return made;
}

// What this circuit feeds, and those that begin at its end.
void add_feeds(const Scenario& scenario, const scenario::Circuit& circuit, std::size_t depth,
               std::vector<std::string>& feeds) {
    feeds.insert(feeds.end(), circuit.feeds.begin(), circuit.feeds.end());
    if (depth > scenario.circuits.size()) return;  // a ring
    for (const auto& after : scenario.circuits)
        if (after.from == circuit.name && &after != &circuit)
            add_feeds(scenario, after, depth + 1, feeds);
}

std::vector<Branch> branches_of(const Scenario& scenario, Temperature conductors,
                                Temperature inside) {
    std::vector<Branch> branches;
    for (std::size_t i = 0; i < scenario.circuits.size(); ++i) {
        const auto& circuit = scenario.circuits[i];
        if (role_of(scenario, circuit) != Role::branch) continue;
        Branch branch{.circuit = i,
                      .name = circuit.name,
                      .feeds = {},
                      .resistance = resistance_of(circuit, conductors),
                      .fuse = guard_of(circuit, inside)};
        add_feeds(scenario, circuit, 0, branch.feeds);
        branches.push_back(std::move(branch));
    }
    return branches;
}

void take_inverter(Unit& unit, const Scenario& scenario) {
    auto described = *scenario.inverter;
    if (unit.main.resistance.origin == Origin::circuit)
        described.cable_resistance = unit.main.resistance.value;
    auto model = inverter::model_of(described, unit.nominal(), unit.of_inverter);
    if (!model) {
        unit.inverter_refused = std::move(model.error());
        return;
    }
    unit.main.resistance.value = model->cable_resistance;
    unit.inverter = *std::move(model);
}

// The unit with wires and fuses as warm as its surroundings say.
Errors take_parts(Unit& unit, const Scenario& scenario, const Warmth& warmth) {
    Errors errors;
    unit.conductors = conductor_temperature(unit.surroundings.inside);
    unit.packs.clear();
    unit.of_inverter.clear();
    unit.findings.clear();
    for (std::size_t i = 0; i < scenario.packs.size(); ++i)
        if (auto packs = packs_of({scenario, i}, unit, warmth, unit.findings, errors))
            unit.packs.push_back(*std::move(packs));
    unit.branches = branches_of(scenario, unit.conductors, unit.surroundings.inside);
    if (scenario.inverter) {
        unit.main = main_of(scenario, unit, unit.findings);
        take_inverter(unit, scenario);
    }
    return errors;
}

// ---- What is told.

// "pack[2].age" as "age", and "pack" of "pack[2]".
std::pair<std::string, std::string> place_and_key(const std::string& where) {
    const auto dot = where.find("].");
    if (dot == std::string::npos) return {where, ""};
    return {where.substr(0, dot + 1), where.substr(dot + 2)};
}

struct Told {
    std::vector<std::string> places;
    std::string key;
    words::Said text;
    words::Said source;
};

}  // namespace

Voltage Packs::rested() const {
    return model->at_rest.voltage(battery::available_fill(model->kinetics, model->at_start));
}

Voltage Packs::rested_at_most(StateOfCharge charge) const {
    const auto left = std::min(battery::charge_left(model->capacity, model->at_start), charge);
    return model->at_rest.voltage(battery::fill_with(model->kinetics, model->capacity, left));
}

Voltage Packs::rested_full() const {
    return model->at_rest.voltage(StateOfCharge(1.0));
}

int Unit::count() const {
    int sum = 0;
    for (const Packs& one : packs)
        sum += one.count;
    return sum;
}

Voltage Unit::nominal() const {
    const auto there = std::ranges::find_if(packs, [](const Packs& one) { return one.count > 0; });
    return there == packs.end() ? 12.8 * volt : there->model->nominal;
}

Warmth usual_warmth(const Scenario& scenario) {
    return {.packs = scenario.outage.battery_temperature.value_or(usual_pack_temperature)};
}

Result<Unit> built(const Scenario& scenario, const Warmth& warmth) {
    Unit unit;
    unit.surroundings.inside = inside_to_begin_with(scenario);
    Errors errors = take_parts(unit, scenario, warmth);
    if (!errors.empty()) return fail(std::move(errors));
    const Temperature before = unit.surroundings.inside;
    unit.surroundings = surroundings_of(scenario, unit);
    // A shut case is as warm as the inverter makes it, and what lies in it is worked out anew.
    if (unit.surroundings.inside != before) (void)take_parts(unit, scenario, warmth);
    return unit;
}

Assumptions told_once(const std::vector<Assumptions>& of_each) {
    std::vector<Told> all;
    for (const Assumptions& each : of_each)
        for (const Assumption& one : each) {
            auto [place, key] = place_and_key(one.where);
            const auto same = std::ranges::find_if(all, [&](const Told& told) {
                return told.key == key && told.text == one.text && told.source == one.source;
            });
            if (same == all.end())
                all.push_back({{std::move(place)}, std::move(key), one.text, one.source});
            else if (std::ranges::find(same->places, place) == same->places.end())
                same->places.push_back(std::move(place));
        }
    Assumptions once;
    for (const Told& told : all) {
        std::string where;
        if (told.places.size() > 1 && told.places.size() == of_each.size()) {
            where = "pack." + told.key;
        } else {
            for (const std::string& place : told.places)
                where +=
                    (where.empty() ? "" : ", ") + place + (told.key.empty() ? "" : "." + told.key);
        }
        once.push_back({std::move(where), told.text, told.source});
    }
    return once;
}

Assumptions assumptions_of(const Unit& unit, const std::vector<std::size_t>& chosen) {
    std::vector<Assumptions> of_each;
    bool by_circuit = unit.inverter && unit.main.resistance.origin == Origin::circuit;
    for (const Packs& packs : unit.packs) {
        const bool asked = chosen.empty() ? packs.count > 0
                                          : std::ranges::find(chosen, packs.index) != chosen.end();
        if (!asked) continue;
        of_each.push_back(packs.taken);
        by_circuit = by_circuit || packs.lead.resistance.origin == Origin::circuit;
    }
    Assumptions told = told_once(of_each);
    if (by_circuit)
        told.push_back(
            {"circuit.links",
             said<"wires are reckoned at {temperature}, as warm as their terminals may become; at "
                  "{cool} they resist 16 % less">(to_the_degree(unit.conductors), celsius(25.0)),
             said<"[NEC] chapter 9 table 8; unit method.md (2)">()});
    return told;
}

Errors strangers_on(const Unit& unit) {
    Errors errors;
    for (const Packs& packs : unit.packs) {
        if (&packs == &unit.packs.front()) continue;
        const auto& first = *unit.packs.front().model;
        const auto& ours = battery::defaults_of(first.chemistry);
        const auto& theirs = battery::defaults_of(packs.model->chemistry);
        if (first.chemistry != packs.model->chemistry)
            errors.push_back(
                {.where = packs.where + ".chemistry",
                 .found =
                     said<"{chemistry} on one bus with {other}: one would feed the other until "
                          "it is empty, and no charger suits both">(theirs.name, ours.name),
                 .remedy = said<"plan the packs of each chemistry by themselves">()});
        else if (std::abs(first.nominal / packs.model->nominal - 1.0) > 0.15)
            errors.push_back({.where = packs.where + ".voltage",
                              .found = said<"{voltage} on one bus with {other}">(
                                  packs.model->nominal, first.nominal),
                              .remedy = said<"join packs of one nominal voltage only">()});
    }
    return errors;
}

wiring::Feed feed_of(const Unit& unit, Power drawn, Current branches) {
    wiring::Feed feed{
        .sources = {}, .main = unit.main.resistance.value, .drawn = drawn, .branches = branches};
    for (const Packs& packs : unit.packs)
        for (int i = 0; i < packs.count; ++i)
            feed.sources.push_back(
                {.emf = packs.rested_at_most(half_full), .resistance = packs.path()});
    return feed;
}

Power direct_power(const inverter::Model& inverter, Power real) {
    return inverter::dc_power(inverter, real, ApparentPower(real));
}

}  // namespace unit
