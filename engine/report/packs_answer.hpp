// The answer to how many packs, and panels, to build.
#pragma once

#include "checks/start_plan.hpp"
#include "report/answer.hpp"
#include "scenario/scenario.hpp"
#include "sizing/builds.hpp"
#include "sizing/inputs.hpp"
#include "sizing/ration.hpp"
#include "sizing/what_matters.hpp"

namespace report {

// All that was worked out for the question.
//   at_the_goal  the chance of builds.with_these_panels, counted until it is clear of the goal
//   with_inputs  chances with what is not well known of the loads varied too: of
//                builds.with_these_panels, and of one pack more
//   starts       packs with which every motor surely starts by itself, and which motor asks for
//                most; `never`: those that no number of packs makes sure
struct StartNeeds {
    int packs = 1;
    std::string load;
    std::vector<std::string> never;
};
[[nodiscard]] StartNeeds start_needs(const checks::StartPlan& plan);

struct PacksFound {
    sizing::Sweep sweep;
    sizing::Builds builds;
    std::optional<sizing::Chance> at_the_goal;
    std::optional<std::vector<sizing::Chance>> with_inputs;
    std::optional<StartNeeds> starts;
    std::vector<sizing::Influence> influences;
    sizing::Ladder ladder;
    int packs = 1;  // as the scenario has them
    int panels = 0;
    std::uint64_t seed = 1;
};

[[nodiscard]] Answer packs_answer(const scenario::Scenario& scenario, const outage::Ready& ready,
                                  const PacksFound& found);

}  // namespace report
