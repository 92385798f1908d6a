// How hard a wire may be worked: the table's figure, less for heat around it and for company.
#pragma once

#include <optional>
#include <string>

#include "scenario/circuit.hpp"
#include "units/quantities.hpp"
#include "wiring/conductor.hpp"
#include "wiring/tables.hpp"

namespace wiring {

inline constexpr double table_ambient_celsius = 30.0;  // of all tables here

// Share of its rating at 30 degC that a conductor keeps; never above 1, and 0 where the place is as
// hot as the insulation may be.
//   source  method.md (6)
[[nodiscard]] double ambient_factor(units::Temperature insulation, units::Temperature around);

// Share kept beside others that carry current too; supply and return count as two.
//   source  [UL 1426] for boat cable, [NEC] 310.15(C)(1) for the others
[[nodiscard]] double bundle_factor(AmpacityTable table, int conductors);

struct Surroundings {
    units::Temperature around{};
    AmpacityTable table = AmpacityTable::boat;  // where the wire names none
    units::Temperature insulation{};            // where the wire names none
};

struct Ampacity {
    units::Current tabulated{};  // of one run
    double ambient = 1.0;
    double bundle = 1.0;
    units::Current allowed{};  // all runs together, derated, within what its terminals allow
    std::optional<units::Current> largest_fuse;  // for all runs
    units::Temperature insulation{};             // the column
    bool by_terminals = false;                   // `allowed` is what the terminals leave of it
    words::Said source;
    Reliability reliability{};
};

// The allowed current of a wire where it lies.
//   gives   nothing where the table has no such size or no such insulation; a metric size takes the
//           row of the next thinner gauge
[[nodiscard]] std::optional<Ampacity> ampacity_of(const scenario::Wire& wire,
                                                  const Surroundings& surroundings);

}  // namespace wiring
