// An outage of which nobody knows how long it lasts.
#pragma once

#include "scenario/scenario.hpp"
#include "units/quantities.hpp"

namespace scenario {

// Standard deviation of the logarithm of how long outages of one kind last, all else unknown:
// common practice, no source. chance/method.md (16)
inline constexpr double spread_of_length = 1.0;

// No outage is looked at for longer.
[[nodiscard]] units::Duration longest_outage();

// How long such an outage is looked at: until 99 of 100 are over, at most for the longest.
//   half_over_by  above zero
[[nodiscard]] units::Duration looked_at(units::Duration half_over_by);

// How long an outage as it was read lasts, or is looked at where nobody knows.
[[nodiscard]] units::Duration looked_at(const Outage& outage);

}  // namespace scenario
