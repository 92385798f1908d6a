// The figures, the working and the tables of a wiring answer.
#pragma once

#include <vector>

#include "checks/wiring.hpp"
#include "checks/wiring_ways.hpp"
#include "report/answer.hpp"

namespace report {

[[nodiscard]] Members wiring_values(const checks::Fit& fit);
[[nodiscard]] std::vector<WorkingRow> wiring_working(const scenario::Scenario& scenario,
                                                     const checks::Fit& fit);
// "circuits", "links", "checks", and "ways" where something fails.
[[nodiscard]] std::vector<Series> wiring_series(const checks::Fit& fit,
                                                const std::vector<checks::WayOut>& ways);

}  // namespace report
