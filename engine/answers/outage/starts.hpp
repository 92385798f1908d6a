// What is said of motors that do not surely start every time of an outage.
#pragma once

#include <vector>

#include "answers/answer.hpp"
#include "questions/shared/outage_starts.hpp"
#include "scenario/scenario.hpp"

namespace answers {

// One finding a load that fails, one a load in doubt, each pinned to the first time; where a plate
// cannot be used, that it is not known.
[[nodiscard]] std::vector<PinnedFinding> outage_start_findings(
    const scenario::Scenario& scenario, const questions::OutageStarts& starts);

}  // namespace answers
