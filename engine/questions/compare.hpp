// What differs between two builds?
#pragma once

#include <optional>
#include <set>
#include <string>
#include <vector>

#include "chance/figures.hpp"
#include "fitting/swap.hpp"
#include "fitting/wiring.hpp"
#include "outage/plan.hpp"
#include "questions/asked.hpp"
#include "scenario/file/read.hpp"
#include "starting/start.hpp"
#include "units/result.hpp"

namespace questions {

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
    scenario::ReadScenario read;
    fitting::Fit fit;
    std::optional<outage::Plan> plan;  // absent: why_no_plan says why
    words::Said why_no_plan = {};
    std::optional<chance::Figures> figures = {};  // with the plan
    std::vector<ComparedStart> starts = {};
    words::Said why_no_starts = words::said<"no load of the build has a motor that is looked at">();
};

// A key of the files whose value is another one; empty where a file does not have it.
struct ChangedKey {
    // As it stands after the =, and in words; empty where the file is silent.
    struct Value {
        std::string written;
        words::Said said;
    };
    std::string key;
    Value before;
    Value after;
};

//   dirty   the checks that the changes bear on
//   moved   the verdicts that are others now
struct CompareFound {
    ComparedBuild old_build;
    ComparedBuild new_build;
    std::vector<fitting::Change> changes;
    std::set<fitting::Dirty> dirty;
    std::vector<fitting::Moved> moved;
    std::vector<ChangedKey> keys;
};

// What differs between builds that have been worked out.
[[nodiscard]] CompareFound compared(ComparedBuild old_build, ComparedBuild new_build);

//   fails   where the wiring of either cannot be looked at, with its file
[[nodiscard]] units::Result<CompareFound> find(const scenario::ReadScenario& read,
                                               const CompareAsked& asked, const How& how);

}  // namespace questions
