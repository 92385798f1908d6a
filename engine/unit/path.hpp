// One way that current takes between two places of the build: what it resists, and what guards it.
#pragma once

#include <cstddef>
#include <optional>
#include <string>
#include <vector>

#include "scenario/finding.hpp"
#include "scenario/scenario.hpp"
#include "unit/circuits.hpp"
#include "unit/known.hpp"
#include "units/quantities.hpp"
#include "wiring/fuse.hpp"

namespace unit {

// The fuse or breaker of a way that opens at the least current.
//   rating   as stamped, of all parallel runs together
//   kept     share of it that the warmth of the case leaves
//   opens    empty where only the rating is known
struct Guard {
    units::Current rating{};
    Kept kept;
    wiring::Envelope opens = {};
    bool breaker = false;
};

//   circuit      place in scenario.circuits; absent where no circuit describes the way
//   connector, contact   the weakest connector, and the weakest switch: what they are rated for
struct Path {
    std::optional<std::size_t> circuit;
    Known<units::Resistance> resistance;
    std::optional<Known<Guard>> fuse;
    std::optional<Known<units::Current>> connector;
    std::optional<Known<units::Current>> contact;
};

// What keys say of a way.
struct SaidOfPath {
    Sayings<units::Resistance> resistance;
    Sayings<units::Current> fuse;
    Sayings<units::Current> connector;
};

struct PathAsked {
    const scenario::Scenario& scenario;
    std::string_view feeds;  // what lies at its far end
    std::string where;       // the table of its keys: "pack[0]", "inverter"
    words::Said who;         // "pack main", "inverter"
    std::string resistance_key;
    units::Temperature conductors{};
    units::Temperature inside{};
};

// The circuit with all that it branches off from, to the bus; both conductors.
[[nodiscard]] units::Resistance resistance_of_way(const scenario::Scenario& scenario,
                                                  std::size_t circuit,
                                                  units::Temperature conductors);

// The fuse or breaker of this circuit alone that opens at the least current.
[[nodiscard]] std::optional<Guard> guard_of(const scenario::Circuit& circuit,
                                            units::Temperature inside);

// The circuit that feeds the name with all that it branches off from, and the keys beside it.
//   findings   appended to where key and circuit say different things
[[nodiscard]] Path path_of(const PathAsked& asked, SaidOfPath said, scenario::Findings& findings);

}  // namespace unit
