// The pictures of the sun answer, the same in every face.
#pragma once

#include <vector>

#include "answers/sun/answer.hpp"

namespace answers {

// "recharge" (a bar a day), "placements" and "panels" (a bar a count), in this order; the last only
// where there is a unit behind the panels.
[[nodiscard]] std::vector<BarChart> sun_bars(const scenario::Scenario& scenario,
                                             const questions::SunResults& results);

// A dull, a likely and a bright day, power by half-hours.
[[nodiscard]] DayCurves sun_curves(const questions::SunDayCurves& day);

}  // namespace answers
