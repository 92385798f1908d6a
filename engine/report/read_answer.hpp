// "What did you understand of my file?"
#pragma once

#include <vector>

#include "outage/plan.hpp"
#include "report/answer.hpp"
#include "scenario/read.hpp"

namespace report {

// Every key that the file gives, what holds where it is silent, what each load is taken to draw,
// and the warnings as findings.
//   takes   loads: as the outage plan resolves them; empty when the outage could not be planned
[[nodiscard]] Answer read_answer(const scenario::ReadScenario& read,
                                 const std::vector<outage::LoadUse>& loads);

}  // namespace report
