// The tables of the sun answer.
#pragma once

#include <vector>

#include "report/sun_answer.hpp"

namespace report {

// "sun_days", "placements", "panels" (with a unit behind the panels) and "sun_hours", in this
// order.
[[nodiscard]] std::vector<Series> sun_series(const scenario::Scenario& scenario,
                                             const SunResults& results);

}  // namespace report
