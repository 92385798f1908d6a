// The tables of the sun answer.
#pragma once

#include <vector>

#include "answers/sun/answer.hpp"

namespace answers {

// "sun_days", "placements", "panels" (with a unit behind the panels) and "sun_hours", in this
// order.
[[nodiscard]] std::vector<Series> sun_series(const scenario::Scenario& scenario,
                                             const questions::SunResults& results);

}  // namespace answers
