// How warm the packs of an outage are.
#pragma once

#include <string>

#include "scenario/assumption.hpp"
#include "scenario/scenario.hpp"
#include "unit/built.hpp"

namespace outage {

// By their room, by outage.battery_temperature, or 20 degC.
//   folder       against which place.weather_file is taken
//   assumptions  appended to
[[nodiscard]] unit::Warmth warmth_of(const scenario::Scenario& scenario, const std::string& folder,
                                     scenario::Assumptions& assumptions);

}  // namespace outage
