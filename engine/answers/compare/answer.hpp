// What differs between two builds: parts, checks that this dirties, verdicts that moved, runtime,
// weight and price; words first.
#pragma once

#include <optional>
#include <string>
#include <vector>

#include "answers/answer.hpp"
#include "chance/figures.hpp"
#include "fitting/wiring.hpp"
#include "outage/plan.hpp"
#include "scenario/read.hpp"
#include "starting/start.hpp"

namespace answers {

// One motor load's start in a build.
struct ComparedStart {
    std::string load;
    starting::StartVerdict verdict{};
    starting::Constraint binding{};
    starting::Utilised worst{};  // highest use of any limit, at its high end
};

// Starts of every motor of a build; empty where it has none.
//   fails    as planned_starts
[[nodiscard]] units::Result<std::vector<ComparedStart>> compared_starts(
    const scenario::Scenario& scenario);

// One build, as far as it could be worked out.
struct ComparedBuild {
    const scenario::ReadScenario& read;
    fitting::Fit fit;
    std::optional<outage::Plan> plan;  // absent: why_no_plan says why
    std::string why_no_plan = {};
    std::optional<chance::Figures> figures = {};  // with the plan
    std::vector<ComparedStart> starts = {};
    std::string why_no_starts = "no load of the build has a motor that is looked at";
};

[[nodiscard]] Answer compare_answer(const ComparedBuild& old_build, const ComparedBuild& new_build);

}  // namespace answers
