// The answer to "will it start?": verdicts, bars, what helps, and the course of each start.
#pragma once

#include "answers/answer.hpp"
#include "scenario/scenario.hpp"
#include "starting/plan.hpp"

namespace answers {

// With assumptions of the loads put first.
[[nodiscard]] Answer start_answer(const scenario::Scenario& scenario,
                                  const starting::StartPlan& plan,
                                  const scenario::Assumptions& assumptions);

}  // namespace answers
