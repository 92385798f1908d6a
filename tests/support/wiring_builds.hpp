// Builds for tests of wiring: small ones, made in code.
#pragma once

#include <string>
#include <vector>

#include <gtest/gtest.h>

#include "fitting/wiring.hpp"
#include "scenario/scenario.hpp"
#include "support/in_english.hpp"

namespace wiring_builds {

using namespace units;

inline scenario::Wire wire(WireSize size, double one_way_feet, double insulation = 105.0) {
    return {
        .size = size, .length = one_way_feet * 0.3048 * metre, .insulation = celsius(insulation)};
}

inline scenario::Fuse fuse(double amperes, std::string family) {
    // By its sheet it loses nothing to warmth, so that worked figures hold as printed.
    return {
        .rating = amperes * ampere, .family = std::move(family), .derate_per_kelvin = Share(0.0)};
}

inline scenario::Switch dc_switch(double amperes) {
    return {.rating = amperes * ampere, .rated_for = "dc"};
}

inline scenario::Pack pack(std::string name, int count) {
    return {.name = std::move(name),
            .count = count,
            .chemistry = scenario::Chemistry::lifepo4,
            .capacity = 100.0 * ampere_hour,
            .rated_over = 5.0 * hour,
            .voltage = 12.8 * volt,
            .resistance = 4e-3 * ohm};
}

// One pack and a branch; no inverter. 30 degC inside, so that tables hold as printed.
inline scenario::Scenario branch_of(std::vector<scenario::Link> links) {
    scenario::Scenario scenario;
    scenario.outage.lasts = 24.0 * hour;
    scenario.packs = {pack("main", 1)};
    scenario.enclosure = scenario::Case{.inside = celsius(30.0)};
    scenario.circuits = {{.name = "lamps", .feeds = {"lamps"}, .links = std::move(links)}};
    return scenario;
}

// So much current for hours in the first circuit, at the voltage the checks reckon with.
inline fitting::Draws drawing(double amperes, double at_volts = 10.5) {
    fitting::Draws draws;
    draws.circuits = {
        {.circuit = "lamps", .at_bus = {.continuous = amperes * at_volts * watt}, .at_outlet = {}}};
    return draws;
}

// A whole unit: packs with fused leads, a main path, an outlet and a branch.
inline scenario::Scenario unit(double inverter_watts, int packs = 2) {
    scenario::Scenario scenario =
        branch_of({fuse(10, "blade"), dc_switch(10), wire(AmericanGauge{16}, 3.0)});
    scenario.packs = {pack("pack", packs)};
    scenario.inverter = scenario::Inverter{.continuous = inverter_watts * watt,
                                           .surge = 2.0 * inverter_watts * watt,
                                           .surge_lasts = 1.0 * second,
                                           .cutoff_voltage = 10.5 * volt};
    scenario.circuits.push_back(
        {.name = "main path",
         .feeds = {"inverter"},
         .links = {fuse(350, "class T"), dc_switch(400), wire(AmericanGauge{-3}, 2.0)}});
    scenario.circuits.push_back(
        {.name = "leads",
         .feeds = {"pack"},
         .links = {fuse(250, "class T"),
                   scenario::Connector{.rating = 280.0 * ampere, .part = "two-pole 175"},
                   wire(AmericanGauge{0}, 2.0), fuse(250, "class T")}});
    scenario.circuits.push_back(
        {.name = "outlet",
         .feeds = {},
         .links = {fuse(15, "breaker"), wire(AmericanGauge{12}, 3.0, 90.0),
                   scenario::SocketOutlet{.rating = 15.0 * ampere, .ground_fault = true}},
         .from = "inverter",
         .neutral = "bonded"});
    return scenario;
}

inline fitting::Draws draws_for(const scenario::Scenario& scenario, double lamps_amperes = 4.0) {
    fitting::Draws draws = drawing(lamps_amperes);
    for (std::size_t i = 1; i < scenario.circuits.size(); ++i) {
        draws.circuits.push_back(
            {.circuit = scenario.circuits[i].name, .at_bus = {}, .at_outlet = {}});
    }
    draws.direct = draws.circuits.front().at_bus;
    return draws;
}

inline fitting::Fit fitted(const scenario::Scenario& scenario, const fitting::Draws& draws) {
    auto fit = fitting::fit(scenario, draws);
    EXPECT_TRUE(fit) << (fit ? "" : print(fit.error().front()));
    return std::move(*fit);
}

// Of this check in one circuit.
inline fitting::Verdict worst(const fitting::Fit& fit, std::string_view id,
                              std::string_view circuit) {
    auto found = fitting::Verdict::fits;
    for (const auto& check : fit.checks) {
        if (check.id == id && check.circuit == circuit &&
            fitting::rank_of(check.verdict) > fitting::rank_of(found)) {
            found = check.verdict;
        }
    }
    return found;
}

inline const fitting::Check* find(const fitting::Fit& fit, std::string_view id,
                                  std::string_view circuit, std::string_view about = "") {
    for (const fitting::Check& check : fit.checks) {
        if (check.id == id && check.circuit == circuit && (about.empty() || words::in_english(check.about) == about)) {
            return &check;
        }
    }
    return nullptr;
}

}  // namespace wiring_builds
