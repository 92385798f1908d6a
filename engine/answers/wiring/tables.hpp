// The figures, the working and the tables of a wiring answer.
#pragma once

#include <vector>

#include "answers/answer.hpp"
#include "fitting/ways.hpp"
#include "fitting/wiring.hpp"

namespace answers {

[[nodiscard]] Members wiring_values(const fitting::Fit& fit);
[[nodiscard]] std::vector<WorkingRow> wiring_working(const scenario::Scenario& scenario,
                                                     const fitting::Fit& fit);
// "circuits", "links", "checks", and "ways" where something fails.
[[nodiscard]] std::vector<Series> wiring_series(const fitting::Fit& fit,
                                                const std::vector<fitting::WayOut>& ways);

}  // namespace answers
