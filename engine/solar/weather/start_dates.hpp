// How many weathers the start dates of a weather file are worth.
#pragma once

#include "units/quantities.hpp"

namespace solar {

// Neighbouring start dates share days, so what they give is alike: this many independent ones know
// a chance as well. method.md (49), never more than start_dates nor less than 1.
//   lasts  of the outage
[[nodiscard]] double independent_start_dates(units::Duration lasts);

}  // namespace solar
