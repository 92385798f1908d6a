// The sun's side of a scenario made ready for the clock.
#pragma once

#include <string>

#include "outage/ready.hpp"
#include "units/result.hpp"

namespace outage {

// Fills site, sky and the sun of all three ends; nothing without a [[panel]] table.
//   folder  against which place.weather_file is taken
//   errors  added to, where the place or the weather file cannot be used
void make_suns(Ready& ready, const scenario::Scenario& scenario, const std::string& folder,
               units::Errors& errors);

// Fills the sun of all three ends from site and sky; both must be there.
void light(Ready& ready);

}  // namespace outage
