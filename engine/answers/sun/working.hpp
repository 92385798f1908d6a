// The arithmetic behind the sun answer, line by line.
#pragma once

#include <vector>

#include "answers/sun/answer.hpp"

namespace answers {

[[nodiscard]] std::vector<WorkingRow> sun_working(const scenario::Scenario& scenario,
                                                  const questions::SunResults& results);

}  // namespace answers
