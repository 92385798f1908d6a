// The starts of a scenario: what each load draws once it runs, and what becomes of each start.
#pragma once

#include <vector>

#include "scenario/assumption.hpp"
#include "scenario/scenario.hpp"
#include "starting/plan.hpp"
#include "units/result.hpp"

namespace questions {

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

}  // namespace questions
