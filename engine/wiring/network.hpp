// Packs in parallel on a bus, an inverter behind the main path: which current flows where.
#pragma once

#include <cstddef>
#include <optional>
#include <vector>

#include "units/quantities.hpp"

namespace wiring {

struct Source {
    units::Voltage emf{};                      // rested, at its fill
    units::Resistance resistance{};            // inside and its own path, above 0
    std::optional<units::Current> limit = {};  // at which its protection opens
    bool may_be_charged = true;                // a current into it can flow
};

struct Feed {
    std::vector<Source> sources;  // at least one
    units::Resistance main{};     // bus to inverter, both conductors
    units::Power drawn{};         // by the inverter at its terminals
    units::Current branches{};    // drawn at the bus beside it
};

enum class Feeding { carries, collapses, nobody_left };

struct Fed {
    Feeding how = Feeding::carries;
    units::Voltage bus{};
    units::Voltage at_load{};
    units::Current main{};
    std::vector<units::Current> shares;  // one a source; negative: it is charged; zero: it is off
    std::vector<std::size_t> opened;     // sources whose protection opened, in that order
    units::Power largest{};              // that could be drawn before the voltage collapses
};

// The steady state. A source beyond its limit opens and the others take over, one after another,
// the most overloaded first; one that may not be charged stands aside.
//   holds for  a collapse: bus, at_load, main and shares are those of `largest`
//   source     method.md (15) to (18)
[[nodiscard]] Fed fed(const Feed& feed);

// The most the inverter can draw with this voltage left at its terminals.
[[nodiscard]] units::Power power_at_voltage(const Feed& feed, units::Voltage at_load);

// What flows into a dead short where all these packs meet, by their insides alone.
[[nodiscard]] units::Current prospective_current(units::Voltage open_circuit,
                                                 units::Resistance inside, int packs);

}  // namespace wiring
