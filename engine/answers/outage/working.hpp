// The arithmetic behind an outage plan, line by line.
#pragma once

#include <vector>

#include "answers/answer.hpp"
#include "outage/plan.hpp"

namespace answers {

[[nodiscard]] std::vector<WorkingRow> outage_working(const outage::Plan& plan);

}  // namespace answers
