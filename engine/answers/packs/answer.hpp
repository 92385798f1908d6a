// The answer to how many packs, and panels, to build.
#pragma once

#include "answers/answer.hpp"
#include "scenario/scenario.hpp"
#include "sizing/builds.hpp"
#include "sizing/ration.hpp"
#include "sizing/what_matters.hpp"
#include "starting/plan.hpp"

namespace answers {

// All that was worked out for the question.
//   of_the_file  the unit as it is; nothing where it lies beyond the grid
//   starts       packs with which every motor surely starts by itself, and which motor asks for
//                most; `never`: those that no number of packs makes sure
struct StartNeeds {
    int packs = 1;
    std::string load;
    std::vector<std::string> never;
};
[[nodiscard]] StartNeeds start_needs(const starting::StartPlan& plan);

struct PacksFound {
    sizing::Grid grid = {};
    sizing::Builds builds = {};
    std::optional<sizing::Build> of_the_file = {};
    std::optional<StartNeeds> starts = {};
    std::vector<sizing::Influence> influences = {};
    sizing::Ladder ladder = {};
    int packs = 1;  // as the scenario has them
    int panels = 0;
    std::uint64_t seed = 1;
};

[[nodiscard]] Answer packs_answer(const scenario::Scenario& scenario, const outage::Ready& ready,
                                  const PacksFound& found);

}  // namespace answers
