// The circuits of a build: which does what, and what its parts come to.
#pragma once

#include <cstddef>
#include <optional>
#include <string_view>

#include "scenario/scenario.hpp"
#include "units/quantities.hpp"
#include "wiring/fuse.hpp"

namespace unit {

enum class Role { pack_lead, main, branch, charging, ac };

[[nodiscard]] Role role_of(const scenario::Scenario& scenario, const scenario::Circuit& circuit);

// Place in scenario.circuits of the first one that feeds this name.
[[nodiscard]] std::optional<std::size_t> circuit_feeding(const scenario::Scenario& scenario,
                                                         std::string_view name);

// The most cables that lie in parallel anywhere in it; each has its own fuse.
[[nodiscard]] double runs_of(const scenario::Circuit& circuit);

// Lugs and bolts of a circuit, both conductors; 0.05 mohm for each of four lugs a wire.
[[nodiscard]] units::Resistance joints_of(const scenario::Circuit& circuit);

// All of it, both conductors; contacts count twice.
//   conductors   how warm its wires are
[[nodiscard]] units::Resistance resistance_of(const scenario::Circuit& circuit,
                                              units::Temperature conductors);

// Whether it names a wire, without which it does not say what the way is made of.
[[nodiscard]] bool names_a_wire(const scenario::Circuit& circuit);

// The warmth that wires are reckoned at, in every question: 75 degC, or that of the case where
// it is warmer. method.md (2)
[[nodiscard]] units::Temperature conductor_temperature(units::Temperature inside);

// Share of its rating that a fuse or breaker keeps in air this warm. method.md (3)
//   hard, likely   where the builder gives no derating, the ends of what makers print
struct Kept {
    double hard = 1.0;
    double likely = 1.0;
};
[[nodiscard]] Kept kept_by(const scenario::Fuse& fuse, units::Temperature around);

}  // namespace unit
