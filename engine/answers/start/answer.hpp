// The answer to "will it start?": verdicts, bars, what helps, and the course of each start.
#pragma once

#include <vector>

#include "answers/answer.hpp"
#include "scenario/scenario.hpp"
#include "starting/plan.hpp"
#include "units/result.hpp"

namespace answers {

// Where the scenario's loads draw how much, from the evidence for each.
//   fails    at "load[i].…"
struct LoadRuns {
    std::vector<starting::LoadRun> runs{};
    scenario::Assumptions assumptions{};
};
[[nodiscard]] units::Result<LoadRuns> load_runs(const scenario::Scenario& scenario);

// The starts of a scenario, its loads filled in from the list of appliances.
//   fails    at the keys that cannot be used
struct PlannedStarts {
    scenario::Scenario scenario;
    starting::StartPlan plan;
    scenario::Assumptions assumptions;
};
[[nodiscard]] units::Result<PlannedStarts> planned_starts(const scenario::Scenario& scenario);

//   takes    any scenario; loads that are like something of the list of appliances are filled in
//   fails    at the keys that cannot be used
[[nodiscard]] units::Result<Answer> start_answer(const scenario::Scenario& scenario);

// The same from what was found, with further assumptions put first.
[[nodiscard]] Answer start_answer(const scenario::Scenario& scenario,
                                  const starting::StartPlan& plan,
                                  const scenario::Assumptions& assumptions);

}  // namespace answers
