// Until when each motor still starts during an outage.
#pragma once

#include <span>
#include <vector>

#include "answers/answer.hpp"
#include "outage/plan.hpp"
#include "scenario/scenario.hpp"
#include "sizing/start_states.hpp"

namespace answers {

// One finding a load whose motor does not surely start every time. For each mix of loads that is
// on, the lowest rested voltage at which it starts is worked out once; every start of the plan is
// then compared with it. Over the members a start is sure where nine in ten of those that have
// supply start surely, and fails where fewer than one in ten of them may start.
//   members   one for each of the plan's starts; empty: the likely course alone
//   gives     nothing where the scenario cannot be asked of starts
[[nodiscard]] std::vector<PinnedFinding> outage_start_findings(
    const scenario::Scenario& scenario, const outage::Plan& plan,
    std::span<const sizing::StartState> members = {});

}  // namespace answers
