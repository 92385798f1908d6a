// The arithmetic behind the sun answer, line by line.
#pragma once

#include <vector>

#include "report/sun_answer.hpp"

namespace report {

[[nodiscard]] std::vector<WorkingRow> sun_working(const scenario::Scenario& scenario,
                                                  const SunResults& results);

}  // namespace report
