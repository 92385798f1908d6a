// "What did you understand of my file?"
#pragma once

#include <vector>

#include "answers/answer.hpp"
#include "outage/plan.hpp"
#include "scenario/file/read.hpp"

namespace answers {

// Every key that the file gives, what holds where it is silent, what each load is taken to draw,
// and the warnings as findings.
//   takes   loads: as the outage plan resolves them; empty when the outage could not be planned
[[nodiscard]] Answer read_answer(const scenario::ReadScenario& read,
                                 const std::vector<outage::LoadUse>& loads);

}  // namespace answers
