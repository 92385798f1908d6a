// How warm it is inside the case. method.md (4)
#pragma once

#include "unit/built.hpp"

namespace unit {

//   unit   without its surroundings; packs, inverter and paths are made
[[nodiscard]] Surroundings surroundings_of(const scenario::Scenario& scenario, const Unit& unit);

// Inside as the file gives it, or as the lid open leaves it: what does not depend on the heat of
// the inverter.
[[nodiscard]] units::Temperature inside_to_begin_with(const scenario::Scenario& scenario);

}  // namespace unit
