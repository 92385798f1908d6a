// The tables of a start: uses of every limit, the course of each run-up, and the arithmetic.
#pragma once

#include <vector>

#include "answers/answer.hpp"
#include "starting/plan.hpp"

namespace answers {

// "utilisation": a row a load and constraint; then "course of <load>": a row an instant.
[[nodiscard]] std::vector<Series> start_series(const starting::StartPlan& plan);

[[nodiscard]] std::vector<WorkingRow> start_working(const starting::StartPlan& plan);

}  // namespace answers
