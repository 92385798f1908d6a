#include "fitting/silent.hpp"

#include <algorithm>
#include <cmath>

#include "battery/cell/chemistry.hpp"
#include "fitting/circuit.hpp"
#include "fitting/unit.hpp"
#include "unit/derating.hpp"
#include "units/said.hpp"
#include "units/text.hpp"
#include "wiring/conductor.hpp"
#include "wiring/connector.hpp"

namespace fitting {

namespace {

using scenario::Case;
using scenario::Circuit;
using scenario::Inverter;
using scenario::Pack;
using scenario::Scenario;
using units::Current;
using units::Voltage;
using words::Said;
using words::said;

const Said practice = said<"common practice, no source">();

template <class Quantity>
Quantity between(Quantity low, Quantity high, double along) {
    return low + along * (high - low);
}
units::Temperature between(units::Temperature low, units::Temperature high, double along) {
    return units::celsius(std::lerp(units::in_celsius(low), units::in_celsius(high), along));
}
units::Share between(units::Share low, units::Share high, double along) {
    return units::Share(std::lerp(low.value(), high.value(), along));
}
units::Efficiency between(units::Efficiency low, units::Efficiency high, double along) {
    return units::Efficiency(std::lerp(low.value(), high.value(), along));
}

template <class Quantity>
Said span(Quantity low, Quantity high) {
    return said<"{low} to {high}, for the file does not say">(low, high);
}

// How a figure's table is found again in a scenario that was copied.
using InLink = std::function<scenario::Link&(Scenario&)>;

struct Listing {
    const Scenario& scenario;
    std::vector<SilentFigure> found = {};

    void add(SilentFigure figure) { found.push_back(std::move(figure)); }
};

// ---- Links.

struct ListLink {
    Listing& listing;
    const Circuit& circuit;
    Role role;
    std::size_t circuit_index;
    std::size_t link_index;
    const Said title;

    template <class Part, class Value>
    void add(const char* key, std::optional<Value> Part::*member, Value low, Value high, Harm harm,
             const Said& source) const {
        add_set(
            key, span(low, high), source, harm,
            [=](Part& part, double along) { part.*member = between(low, high, along); },
            static_cast<Part*>(nullptr));
    }
    template <class Part, class Set>
    void add_set(const char* key, Said text, const Said& source, Harm harm, Set set, Part*) const {
        const std::size_t c = circuit_index;
        const std::size_t l = link_index;
        listing.add({.where = said<"circuit.{circuit}, {part}">(circuit.name, title),
                     .key = key,
                     .circuit = circuit.name,
                     .text = std::move(text),
                     .source = source,
                     .harm = harm,
                     .set = [c, l, set](Scenario& scenario, double along) {
                         set(std::get<Part>(scenario.circuits[c].links[l]), along);
                     }});
    }

    bool alternating() const { return role == Role::ac; }

    // What stands on a direct-current part of the least rating in common use.
    template <class Part>
    void voltage_of(const Part& part, bool known, Voltage least) const {
        if (!part.voltage && !known && !alternating()) {
            add("voltage", &Part::voltage, least, 125.0 * units::volt, Harm::low, practice);
        }
    }

    void operator()(const scenario::Fuse& fuse) const {
        const auto* family = fuse.family ? wiring::find_fuse_family(*fuse.family) : nullptr;
        const bool breaks = family != nullptr && !family->breaks.empty();
        if (!fuse.interrupts && !breaks && !alternating()) {
            add("interrupts", &scenario::Fuse::interrupts, 1000.0 * units::ampere,
                20'000.0 * units::ampere, Harm::low,
                said<"wiring/fuses.toml: the least and the most of all families there">());
        }
        voltage_of(fuse, breaks, 32.0 * units::volt);
        if (!fuse.derate_per_kelvin) {
            add("derate_per_kelvin", &scenario::Fuse::derate_per_kelvin,
                unit::least_derating_per_kelvin, unit::most_derating_per_kelvin, Harm::high,
                said<"unit method.md (3)">());
        }
        if (!fuse.resistance) {
            const auto drop =
                family != nullptr && family->drop ? *family->drop : 0.08 * units::volt;
            add("resistance", &scenario::Fuse::resistance, units::Resistance(), drop / fuse.rating,
                Harm::either, said<"wiring/fuses.toml, drop at its rating">());
        }
    }

    void operator()(const scenario::Switch& part) const {
        if (!part.rated_for && !(alternating() && part.ac_rating)) {
            const std::string wrong = alternating() ? "dc" : "ac";
            add_set(
                "rated_for",
                alternating()
                    ? said<"its stamp may be for direct current alone, for the file does not say">()
                    : said<"its stamp may be for alternating current alone, for the file does not "
                           "say">(),
                practice, Harm::low,
                [wrong](scenario::Switch& then, double along) {
                    then.rated_for = along < 0.5 ? wrong : std::string("both");
                },
                static_cast<scenario::Switch*>(nullptr));
        }
        voltage_of(part, false, 32.0 * units::volt);
        if (!part.resistance) {
            add("resistance", &scenario::Switch::resistance, units::Resistance(),
                0.03 * units::volt / part.rating, Harm::either, practice);
        }
    }

    void operator()(const scenario::Wire& wire) const {
        const bool building = wire.table ? *wire.table == "building" : alternating();
        if (!wire.insulation && wire.table != "cord") {
            add("insulation", &scenario::Wire::insulation, units::celsius(60.0),
                units::celsius(building ? 90.0 : 105.0), Harm::low,
                said<"wiring/ampacity.toml: the lowest column, as of plain PVC">());
        }
        if (alternating() && !wire.terminals) terminals_of(wire);
        const bool gauge = std::holds_alternative<units::AmericanGauge>(wire.size);
        if (!wire.built_to && gauge && !alternating()) {
            add_set(
                "built_to",
                said<"the metal of building wire or the 11 % less of vehicle cable, for the file "
                     "does not say">(),
                said<"[Marine catalogue]">(), Harm::either,
                [](scenario::Wire& then, double along) {
                    then.built_to = along < 0.5 ? "nec" : "sae";
                },
                static_cast<scenario::Wire*>(nullptr));
        }
        if (!wire.tinned) {
            add_set(
                "tinned", said<"tinned or plain, for the file does not say">(),
                "wiring/conductors.toml", Harm::either,
                [](scenario::Wire& then, double along) { then.tinned = along >= 0.5; },
                static_cast<scenario::Wire*>(nullptr));
        }
    }

    // [NEC] 110.14(C)(1): terminals of circuits up to 100 A, or for 14 to 1 AWG, count as made for
    // 60 degC unless marked, others for 75 degC.
    void terminals_of(const scenario::Wire& wire) const {
        const bool thick = wiring::thicker(wire.size, units::AmericanGauge{1});
        const auto unmarked = units::celsius(thick ? 75.0 : 60.0);
        add_set(
            "terminals", said<"made for {temperature} unless they are marked for more">(unmarked),
            said<"[NEC] 110.14(C)(1)">(), Harm::low,
            [unmarked](scenario::Wire& then, double along) {
                then.terminals = between(unmarked, units::celsius(90.0), along);
            },
            static_cast<scenario::Wire*>(nullptr));
    }

    void operator()(const scenario::Connector& part) const {
        const auto* row = part.part ? wiring::find_connector(*part.part) : nullptr;
        if (!part.hottest && (row == nullptr || !row->hottest)) {
            add("hottest", &scenario::Connector::hottest, units::celsius(85.0),
                units::celsius(105.0), Harm::low, practice);
        }
        voltage_of(part, row != nullptr && row->voltage, 32.0 * units::volt);
        if (!part.resistance) {
            const auto contact =
                row != nullptr && row->contact ? *row->contact : 0.01 * units::volt / part.rating;
            add("resistance", &scenario::Connector::resistance, units::Resistance(), contact,
                Harm::either, practice);
        }
    }

    void operator()(const scenario::SocketOutlet& part) const {
        // An accessory socket of a 12 V vehicle stands what charges its battery.
        voltage_of(part, false, 16.0 * units::volt);
    }
};

void list_circuits(Listing& listing) {
    for (std::size_t c = 0; c < listing.scenario.circuits.size(); ++c) {
        const Circuit& circuit = listing.scenario.circuits[c];
        const Role role = role_of(listing.scenario, circuit);
        for (std::size_t l = 0; l < circuit.links.size(); ++l) {
            const scenario::Link& link = circuit.links[l];
            std::visit(ListLink{listing, circuit, role, c, l, title_of(link)}, link);
        }
        if (!circuit.joints) {
            const auto most = joints_of(circuit);
            listing.add({.where = "circuit." + circuit.name,
                         .key = "joints",
                         .circuit = circuit.name,
                         .text = span(units::Resistance(), most),
                         .source = practice,
                         .harm = Harm::either,
                         .set = [c, most](Scenario& scenario, double along) {
                             scenario.circuits[c].joints =
                                 between(units::Resistance(), most, along);
                         }});
        }
    }
}

// ---- Packs.

struct Charged {
    double least;
    double most;  // V of a 12 V pack while it is charged
    Said source;
};
Charged charged_to(scenario::Chemistry chemistry) {
    switch (chemistry) {
        case scenario::Chemistry::flooded:
            return {14.4, 15.5, said<"[Flooded 225 Ah sheet]; boost charge [Deep-cycle guide]">()};
        case scenario::Chemistry::agm:
            return {14.4, 15.0, said<"[AGM 100 Ah sheet], 14.4 to 15.0 V">()};
        case scenario::Chemistry::gel:
            return {14.1, 14.4, said<"[Gel regimen] 14.1 V, [Deep-cycle guide] 14.4 V">()};
        case scenario::Chemistry::lifepo4:
            break;
    }
    return {14.0, 14.6, said<"[LFP 100 sheet], up to 14.6 V: 3.65 V for each cell">()};
}

// Packs of one make: what is not said of them is the same for all.
bool of_one_make(const Pack& a, const Pack& b) {
    return a.chemistry == b.chemistry && a.capacity == b.capacity && a.voltage == b.voltage;
}

// The packs from this one on that are of its make and silent too; empty where an earlier one has
// listed it.
template <class Value>
std::vector<std::size_t> silent_alike(const Scenario& scenario, std::size_t index,
                                      std::optional<Value> Pack::*of) {
    std::vector<std::size_t> alike;
    const auto silent = [&](std::size_t i) {
        return !(scenario.packs[i].*of) && of_one_make(scenario.packs[i], scenario.packs[index]);
    };
    if (!silent(index)) {
        return {};
    }
    for (std::size_t i = 0; i < index; ++i) {
        if (scenario.packs[i].count > 0 && silent(i)) {
            return {};
        }
    }
    for (std::size_t i = index; i < scenario.packs.size(); ++i) {
        if (silent(i)) {
            alike.push_back(i);
        }
    }
    return alike;
}

template <class Value>
void add_of_pack(Listing& listing, std::size_t index, const char* key,
                 std::optional<Value> Pack::*of, Value low, Value high, Harm harm,
                 const Said& source) {
    const auto alike = silent_alike(listing.scenario, index, of);
    if (alike.empty()) {
        return;
    }
    listing.add({.where = "pack." + listing.scenario.packs[index].name,
                 .key = key,
                 .circuit = "",
                 .text = span(low, high),
                 .source = source,
                 .harm = harm,
                 .set = [=](Scenario& scenario, double along) {
                     for (const std::size_t i : alike) {
                         scenario.packs[i].*of = between(low, high, along);
                     }
                 }});
}

// What it has inside and on its way to the bus.
void list_resistances(Listing& listing, std::size_t index) {
    const Pack& pack = listing.scenario.packs[index];
    const auto inner = usual_inside(pack);
    // Up to half again: what a new pack may have at most, for the wear that `age` brings comes on
    // top, and both together are as much as sheets of 100 Ah packs allow, 20 mohm.
    add_of_pack(listing, index, "resistance", &Pack::resistance, 0.4 * inner, 1.5 * inner,
                Harm::either,
                said<"two fifths to half again of the usual one; common practice, no source; [LFP "
                     "100 sheet], at most 20 mohm with all wear">());
    if (!unit::circuit_feeding(listing.scenario, pack.name)) {
        add_of_pack(listing, index, "lead_resistance", &Pack::lead_resistance, 0.001 * units::ohm,
                    0.004 * units::ohm, Harm::either, practice);
    }
}

void list_current_limit(Listing& listing, std::size_t index) {
    const Pack& pack = listing.scenario.packs[index];
    if (pack.chemistry != scenario::Chemistry::lifepo4) {
        return;
    }
    add_of_pack(listing, index, "current_limit", &Pack::current_limit,
                0.5 / units::hour * pack.capacity, 1.0 / units::hour * pack.capacity, Harm::low,
                said<"half the capacity in an hour to all of it; common practice, no source">());
}

void list_absorption(Listing& listing, std::size_t index) {
    const Pack& pack = listing.scenario.packs[index];
    const auto& usual = battery::defaults_of(pack.chemistry);
    const double series =
        std::max(1.0, std::round(pack.voltage.value_or(usual.nominal) / usual.nominal));
    const Charged charged = charged_to(pack.chemistry);
    add_of_pack(listing, index, "absorption_voltage", &Pack::absorption_voltage,
                series * charged.least * units::volt, series * charged.most * units::volt,
                Harm::high, charged.source);
}

void list_age(Listing& listing, std::size_t index) {
    const auto ages = silent_alike(listing.scenario, index, &Pack::age);
    if (ages.empty()) {
        return;
    }
    const auto at = [](double along) {
        return along < 1.0 / 3.0   ? scenario::Age::fresh
               : along < 2.0 / 3.0 ? scenario::Age::mid_life
                                   : scenario::Age::end_of_life;
    };
    listing.add({.where = "pack." + listing.scenario.packs[index].name,
                 .key = "age",
                 .circuit = "",
                 .text = said<"new to worn, for the file does not say">(),
                 .source = said<"battery method.md">(),
                 .harm = Harm::either,
                 .set = [ages, at](Scenario& scenario, double along) {
                     for (const std::size_t each : ages) {
                         scenario.packs[each].age = at(along);
                     }
                 }});
}

void list_packs(Listing& listing) {
    for (std::size_t i = 0; i < listing.scenario.packs.size(); ++i) {
        const Pack& pack = listing.scenario.packs[i];
        if (pack.count == 0 || pack.capacity <= units::Charge()) {
            continue;
        }
        list_resistances(listing, i);
        list_current_limit(listing, i);
        list_absorption(listing, i);
        list_age(listing, i);
    }
}

// ---- Inverter, panels, case.

template <class Value>
void add_of_inverter(Listing& listing, const char* key, std::optional<Value> Inverter::*of,
                     Value low, Value high, Harm harm, const Said& source) {
    if ((*listing.scenario.inverter).*of) {
        return;
    }
    listing.add({.where = "inverter",
                 .key = key,
                 .circuit = "",
                 .text = span(low, high),
                 .source = source,
                 .harm = harm,
                 .set = [=](Scenario& scenario, double along) {
                     (*scenario.inverter).*of = between(low, high, along);
                 }});
}

void list_inverter(Listing& listing) {
    if (!listing.scenario.inverter) {
        return;
    }
    const Inverter& inverter = *listing.scenario.inverter;
    double steps = 1.0;
    if (!listing.scenario.packs.empty()) {
        const Pack& pack = listing.scenario.packs.front();
        const auto usual = battery::defaults_of(pack.chemistry).nominal;
        steps = std::max(1.0, std::round(pack.voltage.value_or(usual) / usual));
    }
    add_of_inverter(listing, "cutoff_voltage", &Inverter::cutoff_voltage,
                    steps * 10.0 * units::volt, steps * 11.0 * units::volt, Harm::either,
                    said<"[Inverter manuals] low-voltage tables">());
    add_of_inverter(listing, "surge", &Inverter::surge, inverter.continuous,
                    2.0 * inverter.continuous, Harm::high, practice);
    add_of_inverter(listing, "surge_lasts", &Inverter::surge_lasts, 0.02 * units::second,
                    5.0 * units::second, Harm::high, practice);
    if (!unit::circuit_feeding(listing.scenario, "inverter")) {
        add_of_inverter(listing, "cable_resistance", &Inverter::cable_resistance,
                        0.0005 * units::ohm, 0.0025 * units::ohm, Harm::either, practice);
    }
    if (inverter.efficiency.empty()) {
        const units::Efficiency low(0.84);
        const units::Efficiency high(0.93);
        listing.add(
            {.where = "inverter",
             .key = "efficiency",
             .circuit = "",
             .text = said<"84 to 93 % at its rating, for the file does not say">(),
             .source = practice,
             .harm = Harm::low,
             .set = [low, high](Scenario& scenario, double along) {
                 scenario.inverter->efficiency = {{units::Share(1.0), between(low, high, along)}};
             }});
    }
}

void list_panels(Listing& listing) {
    const auto& controller = listing.scenario.controller;
    if (!controller || controller->kind != scenario::ControllerKind::pwm) {
        return;  // any other passes power, which is stated
    }
    for (std::size_t i = 0; i < listing.scenario.panels.size(); ++i) {
        const scenario::Panel& panel = listing.scenario.panels[i];
        if (panel.short_circuit_current) {
            continue;
        }
        // Panels for 12 V work at 17 to 20 V, and their short-circuit current is a tenth more.
        const Current low = panel.power / (20.0 * units::volt);
        const Current high = 1.1 * panel.power / (17.0 * units::volt);
        listing.add({.where = "panel[" + std::to_string(i) + "]",
                     .key = "short_circuit_current",
                     .circuit = "",
                     .text = span(low, high),
                     .source = practice,
                     .harm = Harm::high,
                     .set = [i, low, high](Scenario& scenario, double along) {
                         scenario.panels[i].short_circuit_current = between(low, high, along);
                     }});
    }
}

void list_case(Listing& listing) {
    if (!listing.scenario.enclosure) {
        return;  // no case is described, so none is judged
    }
    const Case& enclosure = *listing.scenario.enclosure;
    const auto add = [&listing](const char* key, Said text, auto set) {
        listing.add(
            {.where = "case",
             .key = key,
             .circuit = "",
             .text = std::move(text),
             .source = practice,
             .harm = Harm::low,
             .set = [set](Scenario& scenario, double along) { set(*scenario.enclosure, along); }});
    };
    if (!enclosure.lid) {
        add("lid", said<"shut or open while the inverter works, for the file does not say">(),
            [](Case& then, double along) { then.lid = along < 0.5 ? "closed" : "open"; });
    }
    const bool sides = enclosure.length && enclosure.width && enclosure.height;
    if (!enclosure.surface && !sides) {
        const units::Area low = 0.2 * units::square_metre;
        const units::Area high = 2.0 * units::square_metre;
        add("surface", span(low, high),
            [low, high](Case& then, double along) { then.surface = between(low, high, along); });
    }
    if (!enclosure.material) {
        add("material", said<"plastic or steel, for the file does not say">(),
            [](Case& then, double along) { then.material = along < 0.5 ? "plastic" : "steel"; });
    }
}

}  // namespace

std::vector<SilentFigure> silent_figures(const Scenario& scenario) {
    Listing listing{scenario};
    list_circuits(listing);
    list_packs(listing);
    list_inverter(listing);
    list_panels(listing);
    list_case(listing);
    return std::move(listing.found);
}

Scenario completed(Scenario scenario, const std::vector<SilentFigure>& silent,
                   const Completion& how) {
    for (const SilentFigure& figure : silent) {
        if (figure.harm == Harm::either) {
            if (how.cutoff_high && figure.key == "cutoff_voltage") {
                figure.set(scenario, *how.cutoff_high ? 1.0 : 0.0);
            } else if (how.others != Completion::Other::likely) {
                figure.set(scenario, how.others == Completion::Other::low ? 0.0 : 1.0);
            }
        } else {
            const bool low = (figure.harm == Harm::low) == how.harmful;
            figure.set(scenario, low ? 0.0 : 1.0);
        }
    }
    return scenario;
}

}  // namespace fitting
