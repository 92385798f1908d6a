// What differs between two builds: parts, checks that this dirties, verdicts that moved, runtime,
// weight and price; words first.
#pragma once

#include <optional>
#include <string>
#include <vector>

#include "checks/wiring.hpp"
#include "outage/plan.hpp"
#include "report/answer.hpp"
#include "scenario/read.hpp"

namespace report {

// One build, as far as it could be worked out.
struct ComparedBuild {
    const scenario::ReadScenario& read;
    checks::Fit fit;
    std::optional<outage::Plan> plan;  // absent: why_no_plan says why
    std::string why_no_plan = {};
    // Verdicts of starting, load by load; absent where nothing starts or nothing is known.
    std::vector<std::pair<std::string, std::string>> starts = {};
};

[[nodiscard]] Answer compare_answer(const ComparedBuild& old_build, const ComparedBuild& new_build);

}  // namespace report
