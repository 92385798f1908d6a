#include "unit/path.hpp"

#include <algorithm>
#include <cmath>

#include <fmt/format.h>

#include "units/text.hpp"
#include "wiring/connector.hpp"

namespace unit {

namespace {

using scenario::Circuit;
using scenario::Findings;
using units::Current;
using units::Resistance;

constexpr double differs = 0.05;  // what a person rounds; common practice, no source

// The circuit and those it hangs on, to the bus.
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
void differ(const PathAsked& asked, std::string text, std::string mend, Findings& findings) {
    findings.push_back({.severity = scenario::Severity::caution,
                        .where = asked.who,
                        .text = std::move(text),
                        .mend = std::move(mend),
                        .source = "unit method.md (1)"});
}

// Of two ratings in one way the smaller counts; a key that the first pack lends is no second
// rating.
std::optional<Known<Current>> rating(const Sayings<Current>& said) {
    if (said.circuit && said.key && *said.key < *said.circuit)
        return Known<Current>{*said.key, Origin::key};
    return known(said);
}

void tell_ratings(const PathAsked& asked, const std::string& circuit, std::string_view key,
                  std::string_view what, const Sayings<Current>& said, Findings& findings) {
    if (!said.circuit || !said.key) return;
    if (std::abs(*said.key / *said.circuit - 1.0) <= 1e-9) return;
    differ(asked,
           fmt::format("{}.{} says {}, and the circuit {} has a {} of {}; the smaller counts",
                       asked.where, key, units::show(*said.key, 4), circuit, what,
                       units::show(*said.circuit, 4)),
           "say it once, in the circuit", findings);
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
    std::optional<Guard> guard;
    std::optional<Current> of_connectors;
    std::optional<Current> of_contacts;
    for (const auto& link : circuit.links)
        std::visit(Collect{.circuit = circuit,
                           .inside = inside,
                           .fuse = guard,
                           .connector = of_connectors,
                           .contact = of_contacts},
                   link);
    return guard;
}

Path path_of(const PathAsked& asked, SaidOfPath said, Findings& findings) {
    Path path{.circuit = circuit_feeding(asked.scenario, asked.feeds)};
    std::optional<Guard> guard;
    std::optional<Current> contact;
    std::string name;
    if (path.circuit) {
        const auto chain = chain_of(asked.scenario, *path.circuit);
        name = chain.front()->name;
        bool wired = false;
        for (const Circuit* circuit : chain) {
            wired = wired || names_a_wire(*circuit);
            for (const auto& link : circuit->links)
                std::visit(Collect{.circuit = *circuit,
                                   .inside = asked.inside,
                                   .fuse = guard,
                                   .connector = said.connector.circuit,
                                   .contact = contact},
                           link);
        }
        if (wired)
            said.resistance.circuit =
                resistance_of_way(asked.scenario, *path.circuit, asked.conductors);
    }
    if (guard) said.fuse.circuit = guard->rating;
    if (contact) path.contact = Known<Current>{*contact, Origin::circuit};
    if (const auto resistance = known(said.resistance)) path.resistance = *resistance;
    if (const auto fuse = rating(said.fuse)) {
        path.fuse =
            Known<Guard>{{.rating = fuse->value, .kept = kept_by({}, asked.inside)}, fuse->origin};
        // Beside a key of the same rating the circuit knows more of the fuse.
        if (guard && guard->rating <= fuse->value)
            path.fuse = Known<Guard>{*guard, Origin::circuit};
    }
    path.connector = rating(said.connector);
    const auto& key = said.resistance.key;
    if (key && said.resistance.circuit && std::abs(*key / *said.resistance.circuit - 1.0) > differs)
        differ(asked,
               fmt::format("{}.{} says {}, and the circuit {} comes to {}; the circuit counts",
                           asked.where, asked.resistance_key, units::show(*key, 3), name,
                           units::show(*said.resistance.circuit, 3)),
               "leave out the key, or mend the circuit's wires", findings);
    tell_ratings(asked, name, "fuse", "fuse", said.fuse, findings);
    tell_ratings(asked, name, "connector", "connector", said.connector, findings);
    return path;
}

}  // namespace unit
