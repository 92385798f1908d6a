// The arithmetic behind an outage plan, line by line.
#pragma once

#include <vector>

#include "outage/plan.hpp"
#include "report/answer.hpp"

namespace report {

[[nodiscard]] std::vector<WorkingRow> outage_working(const outage::Plan& plan);

}  // namespace report
