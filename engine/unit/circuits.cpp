#include "unit/circuits.hpp"

#include <algorithm>
#include <variant>

#include "unit/derating.hpp"
#include "wiring/conductor.hpp"
#include "wiring/connector.hpp"

namespace unit {

namespace {

using scenario::Circuit;
using scenario::Scenario;
using units::Resistance;
using units::Temperature;

constexpr double milliohm = 1e-3;
constexpr Resistance of_a_lug = 0.05 * milliohm * units::ohm;  // common practice, no source
constexpr double lugs_a_wire = 4.0;                            // two ends, two conductors

Resistance of_part(const scenario::Fuse& fuse) {
    if (fuse.resistance) return *fuse.resistance;
    const auto* family = fuse.family ? wiring::find_fuse_family(*fuse.family) : nullptr;
    // Drop at the rating: blade [Blade sheets], bolted from memory; the larger where unknown.
    const auto drop = family != nullptr && family->drop ? *family->drop : 0.096 * units::volt;
    return drop / fuse.rating;
}
Resistance of_part(const scenario::Switch& part) {
    // 300 A class 0.1 mohm, so 30 mV at its rating; common practice, no source.
    return part.resistance.value_or(0.03 * units::volt / part.rating);
}
Resistance of_part(const scenario::Connector& part) {
    const auto* row = part.part ? wiring::find_connector(*part.part) : nullptr;
    // Two poles. 10 mV a contact at its rating where nothing is known; common practice, no source.
    const auto contact =
        row != nullptr && row->contact ? *row->contact : 0.01 * units::volt / part.rating;
    return 2.0 * part.resistance.value_or(contact);
}
Resistance of_part(const scenario::SocketOutlet& part) {
    return 2.0 * (0.01 * units::volt / part.rating);  // common practice, no source
}

Resistance link_resistance(const scenario::Link& link, Temperature conductors) {
    if (const auto* wire = std::get_if<scenario::Wire>(&link))
        return wiring::resistance_of(*wire, conductors);
    return std::visit(
        [](const auto& part) {
            if constexpr (std::is_same_v<std::decay_t<decltype(part)>, scenario::Wire>)
                return Resistance();
            else
                return of_part(part);
        },
        link);
}

bool feeds(const Circuit& circuit, std::string_view name) {
    return std::ranges::find(circuit.feeds, name) != circuit.feeds.end();
}

bool is_wire(const scenario::Link& link) {
    return std::holds_alternative<scenario::Wire>(link);
}

}  // namespace

Temperature conductor_temperature(Temperature inside) {
    return std::max(units::celsius(75.0), inside);  // as [NEC] ch. 9 table 8 is printed
}

Resistance joints_of(const Circuit& circuit) {
    if (circuit.joints) return *circuit.joints;
    const auto wires = std::ranges::count_if(circuit.links, is_wire);
    return static_cast<double>(wires) * lugs_a_wire * of_a_lug;
}

double runs_of(const Circuit& circuit) {
    double runs = 1.0;
    for (const scenario::Link& link : circuit.links)
        if (const auto* wire = std::get_if<scenario::Wire>(&link))
            runs = std::max(runs, static_cast<double>(wire->runs.value_or(1)));
    return runs;
}

Resistance resistance_of(const Circuit& circuit, Temperature conductors) {
    Resistance all = joints_of(circuit);
    for (const scenario::Link& link : circuit.links) {
        const double alike = std::holds_alternative<scenario::Fuse>(link) ? runs_of(circuit) : 1.0;
        all += link_resistance(link, conductors) / alike;
    }
    return all;
}

bool names_a_wire(const Circuit& circuit) {
    return std::ranges::any_of(circuit.links, is_wire);
}

Kept kept_by(const scenario::Fuse& fuse, Temperature around) {
    const double above = std::max(0.0, units::in_celsius(around) - 25.0);
    const auto kept = [above](double a_kelvin) { return std::max(0.05, 1.0 - a_kelvin * above); };
    if (fuse.derate_per_kelvin) {
        const double told = kept(fuse.derate_per_kelvin->value());
        return {.hard = told, .likely = told};
    }
    return {.hard = kept(most_derating_per_kelvin.value()),
            .likely = kept(least_derating_per_kelvin.value())};
}

std::optional<std::size_t> circuit_feeding(const Scenario& scenario, std::string_view name) {
    for (std::size_t i = 0; i < scenario.circuits.size(); ++i)
        if (feeds(scenario.circuits[i], name)) return i;
    return std::nullopt;
}

Role role_of(const Scenario& scenario, const Circuit& circuit) {
    const auto any_named = [&circuit](const auto& tables, auto test) {
        return std::ranges::any_of(
            tables, [&](const auto& table) { return test(table) && feeds(circuit, table.name); });
    };
    const auto always = [](const auto&) { return true; };
    if (circuit.from == "inverter") return Role::ac;
    if (feeds(circuit, "inverter")) return Role::main;
    if (any_named(scenario.packs, always)) return Role::pack_lead;
    if (any_named(scenario.chargers, always) || feeds(circuit, "charge_controller") ||
        feeds(circuit, "charge controller") || feeds(circuit, "panels") || feeds(circuit, "panel"))
        return Role::charging;
    if (circuit.from && circuit.from != "bus") {
        const auto before = std::ranges::find(scenario.circuits, *circuit.from, &Circuit::name);
        if (before != scenario.circuits.end() && before->from != circuit.name)
            return role_of(scenario, *before) == Role::ac ? Role::ac : Role::branch;
    }
    const auto by_wall = [](const auto& load) { return load.from == scenario::Outlet::ac; };
    const auto by_bus = [](const auto& load) { return load.from != scenario::Outlet::ac; };
    return any_named(scenario.loads, by_wall) && !any_named(scenario.loads, by_bus) ? Role::ac
                                                                                    : Role::branch;
}

}  // namespace unit
