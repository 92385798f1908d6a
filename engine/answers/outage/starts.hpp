// Until when each motor still starts during an outage.
#pragma once

#include <vector>

#include "answers/answer.hpp"
#include "outage/plan.hpp"
#include "scenario/scenario.hpp"

namespace answers {

// One finding a load whose motor does not surely start every time. For each mix of loads that is
// on, the lowest rested voltage at which it starts is worked out once; every start of the plan is
// then compared with it.
//   gives   nothing where the scenario cannot be asked of starts
[[nodiscard]] std::vector<PinnedFinding> outage_start_findings(const scenario::Scenario& scenario,
                                                               const outage::Plan& plan);

}  // namespace answers
