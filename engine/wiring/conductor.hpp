// What a copper conductor is by its size: metal, resistance, and what a short does to it.
#pragma once

#include <optional>

#include "scenario/circuit.hpp"
#include "units/quantities.hpp"
#include "units/size.hpp"
#include "wiring/quantities.hpp"

namespace wiring {

// How much metal a gauge has: building wire, or the thinner SAE make of vehicles and boats.
enum class BuiltTo { nec, sae };

//   source  method.md (1), (2)
[[nodiscard]] units::Length diameter_of(units::AmericanGauge gauge);
[[nodiscard]] units::Area area_of(units::AmericanGauge gauge);
[[nodiscard]] units::Area area_of(const units::WireSize& size);

// Resistance at one temperature from that at another; method.md (3).
[[nodiscard]] ResistancePerLength at_temperature(ResistancePerLength known, units::Temperature at,
                                                 units::Temperature wanted);

// The temperature coefficient referred to a temperature, per kelvin; method.md (3).
[[nodiscard]] double copper_coefficient_at(units::Temperature reference);

// From the metal alone: copper of 100 % conductivity, no lay; method.md (4).
[[nodiscard]] ResistancePerLength resistance_of_area(units::Area area, units::Temperature at);

struct ConductorKind {
    units::WireSize size;
    BuiltTo built_to = BuiltTo::nec;
    bool tinned = false;
};

// One conductor, one way: by its table, or by its metal where the table has no such size.
//   source  conductors.toml; method.md (4), (5)
[[nodiscard]] ResistancePerLength resistance_of(const ConductorKind& kind, units::Temperature at);

// Supply and return lengths kept apart; nobody has to guess whether a length is both ways.
struct Run {
    units::Length supply{};
    units::Length back{};
};
[[nodiscard]] Run run_of(const scenario::Wire& wire);

// All of the wire, supply and return, with its parallel runs.
[[nodiscard]] units::Resistance resistance_of(const scenario::Wire& wire, units::Temperature at);

// The next thicker size of the same system that is made; nothing beyond the thickest.
[[nodiscard]] std::optional<units::WireSize> next_thicker(const units::WireSize& size);

[[nodiscard]] bool thicker(const units::WireSize& a, const units::WireSize& b);

}  // namespace wiring
