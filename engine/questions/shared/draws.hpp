// What each circuit carries, from the loads' hours and cycles.
#pragma once

#include "fitting/wiring.hpp"
#include "scenario/scenario.hpp"
#include "units/result.hpp"

namespace questions {

//   fails   where a load's draw cannot be told, at its key
[[nodiscard]] units::Result<fitting::Draws> draws_of(const scenario::Scenario& scenario);

}  // namespace questions
