// The tables of a start: uses of every limit, the course of each run-up, and the arithmetic.
#pragma once

#include <vector>

#include "checks/start_plan.hpp"
#include "report/answer.hpp"

namespace report {

// "utilisation": a row a load and constraint; then "course of <load>": a row an instant.
[[nodiscard]] std::vector<Series> start_series(const checks::StartPlan& plan);

[[nodiscard]] std::vector<WorkingRow> start_working(const checks::StartPlan& plan);

}  // namespace report
