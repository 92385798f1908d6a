#include "unit/path.hpp"

#include <algorithm>
#include <cmath>

#include <fmt/format.h>

#include "units/said.hpp"
#include "wiring/connector.hpp"

namespace unit {

namespace {

using scenario::Circuit;
using scenario::Findings;
using units::Current;
using units::Resistance;

constexpr double differs = 0.05;  // what a person rounds; common practice, no source

// The circuit and those it branches off from, to the bus.
std::vector<const Circuit*> chain_of(const scenario::Scenario& scenario, std::size_t last) {
    std::vector<const Circuit*> chain{&scenario.circuits[last]};
    while (chain.back()->from && chain.size() <= scenario.circuits.size()) {
        const auto before =
            std::ranges::find(scenario.circuits, *chain.back()->from, &Circuit::name);
        if (before == scenario.circuits.end()) break;
        if (std::ranges::find(chain, &*before) != chain.end()) break;
        chain.push_back(&*before);
    }
    return chain;
}

// Collects what guards a chain.
struct Collect {
    const Circuit& circuit;
    units::Temperature inside;
    std::optional<Guard>& fuse;
    std::optional<Current>& connector;
    std::optional<Current>& contact;

    static void narrow(std::optional<Current>& least, Current rating) {
        least = std::min(least.value_or(rating), rating);
    }
    void operator()(const scenario::Fuse& part) const {
        const Current rating = runs_of(circuit) * part.rating;
        if (fuse && fuse->rating <= rating) return;
        fuse = Guard{.rating = rating,
                     .kept = kept_by(part, inside),
                     .opens = wiring::envelope_of(
                         part, part.family ? wiring::find_fuse_family(*part.family) : nullptr),
                     .breaker = part.family == "breaker"};
    }
    void operator()(const scenario::Switch& part) const { narrow(contact, part.rating); }
    void operator()(const scenario::Connector& part) const {
        const auto* row = part.part ? wiring::find_connector(*part.part) : nullptr;
        narrow(connector, wiring::rating_of(part, row).rating);
    }
    void operator()(const auto&) const {}
};

// Key and circuit say different things of one way.
void differ(const PathAsked& asked, words::Said text, words::Said mend, Findings& findings) {
    findings.push_back({.severity = scenario::Severity::caution,
                        .where = asked.who,
                        .text = std::move(text),
                        .mend = std::move(mend),
                        .source = words::said<"unit method.md (1)">()});
}

// Of two ratings in one way the smaller counts; a key that the first pack lends is no second
// rating.
std::optional<Known<Current>> rating(const Sayings<Current>& said) {
    if (said.circuit && said.key && *said.key < *said.circuit)
        return Known<Current>{*said.key, Origin::key};
    return known(said);
}

void tell_ratings(const PathAsked& asked, const std::string& circuit, std::string_view key,
                  const words::Said& what, const Sayings<Current>& said, Findings& findings) {
    if (!said.circuit || !said.key) return;
    if (std::abs(*said.key / *said.circuit - 1.0) <= 1e-9) return;
    differ(asked,
           words::said<"{key} says {rating}, and the circuit {circuit} has a {part} of {its}; the "
                       "smaller counts">(fmt::format("{}.{}", asked.where, key),
                                         units::amount(*said.key, 4), circuit, what,
                                         units::amount(*said.circuit, 4)),
           words::said<"say it once, in the circuit">(), findings);
}

// What the circuits along a way have that guards it.
struct Along {
    std::string name;    // of the circuit at the far end
    bool wired = false;  // some wire is named, so that the resistance is known
    std::optional<Guard> fuse;
    std::optional<Current> connector;
    std::optional<Current> contact;
};

void collect(const Circuit& circuit, units::Temperature inside, Along& along) {
    for (const auto& link : circuit.links)
        std::visit(Collect{.circuit = circuit,
                           .inside = inside,
                           .fuse = along.fuse,
                           .connector = along.connector,
                           .contact = along.contact},
                   link);
}

Along along_chain(const std::vector<const Circuit*>& chain, units::Temperature inside) {
    Along along{.name = chain.front()->name};
    for (const Circuit* circuit : chain) {
        along.wired = along.wired || names_a_wire(*circuit);
        collect(*circuit, inside, along);
    }
    return along;
}

// Of the circuit's guard and the key's rating.
std::optional<Known<Guard>> fuse_of(const Sayings<Current>& said, const std::optional<Guard>& guard,
                                    units::Temperature inside) {
    const auto fuse = rating(said);
    if (!fuse) return std::nullopt;
    // Beside a key of the same rating the circuit knows more of the fuse.
    if (guard && guard->rating <= fuse->value) return Known<Guard>{*guard, Origin::circuit};
    return Known<Guard>{{.rating = fuse->value, .kept = kept_by({}, inside)}, fuse->origin};
}

void tell_resistances(const PathAsked& asked, const std::string& circuit,
                      const Sayings<Resistance>& said, Findings& findings) {
    if (!said.key || !said.circuit) return;
    if (!(std::abs(*said.key / *said.circuit - 1.0) > differs)) return;
    differ(asked,
           words::said<"{key} says {resistance}, and the circuit {circuit} comes to {its}; the "
                       "circuit counts">(fmt::format("{}.{}", asked.where, asked.resistance_key),
                                         *said.key, circuit, *said.circuit),
           words::said<"leave out the key, or mend the circuit's wires">(), findings);
}

}  // namespace

Resistance resistance_of_way(const scenario::Scenario& scenario, std::size_t circuit,
                             units::Temperature conductors) {
    Resistance sum{};
    for (const Circuit* part : chain_of(scenario, circuit))
        sum += resistance_of(*part, conductors);
    return sum;
}

std::optional<Guard> guard_of(const Circuit& circuit, units::Temperature inside) {
    Along along;
    collect(circuit, inside, along);
    return along.fuse;
}

Path path_of(const PathAsked& asked, SaidOfPath said, Findings& findings) {
    Path path{.circuit = circuit_feeding(asked.scenario, asked.feeds)};
    Along along;
    if (path.circuit) {
        along = along_chain(chain_of(asked.scenario, *path.circuit), asked.inside);
        if (along.connector) said.connector.circuit = along.connector;
        if (along.wired)
            said.resistance.circuit =
                resistance_of_way(asked.scenario, *path.circuit, asked.conductors);
    }
    if (along.fuse) said.fuse.circuit = along.fuse->rating;
    if (along.contact) path.contact = Known<Current>{*along.contact, Origin::circuit};
    if (const auto resistance = known(said.resistance)) path.resistance = *resistance;
    path.fuse = fuse_of(said.fuse, along.fuse, asked.inside);
    path.connector = rating(said.connector);
    tell_resistances(asked, along.name, said.resistance, findings);
    tell_ratings(asked, along.name, "fuse", words::said<"fuse">(), said.fuse, findings);
    tell_ratings(asked, along.name, "connector", words::said<"connector">(), said.connector,
                 findings);
    return path;
}

}  // namespace unit
