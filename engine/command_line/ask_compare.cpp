#include "command_line/ask_compare.hpp"

#include <CLI/CLI.hpp>

#include "answers/compare/answer.hpp"
#include "answers/wiring/draws.hpp"
#include "command_line/in_its_room.hpp"
#include "command_line/read_request.hpp"
#include "outage/ready.hpp"
#include "scenario/file.hpp"
#include "scenario/set_aside.hpp"
#include "sizing/builds.hpp"
#include "sizing/member_runs.hpp"
#include "sizing/members_of.hpp"

namespace command_line {

namespace {

units::Errors in_file(units::Errors errors, const std::string& file) {
    for (auto& error : errors) {
        if (error.file.empty()) {
            error.file = file;
        }
    }
    return errors;
}

units::Result<answers::ComparedBuild> build_of(const scenario::ReadScenario& read,
                                               std::uint64_t seed) {
    // What is taken for the room stands among the plan's assumptions.
    const auto cold = InItsRoom::at_the_coldest(read);
    const auto draws = answers::draws_of(cold.scenario());
    if (!draws) {
        return units::fail(in_file(draws.error(), read.file_name));
    }
    auto fit = fitting::fit(cold.scenario(), *draws);
    if (!fit) {
        return units::fail(in_file(fit.error(), read.file_name));
    }
    answers::ComparedBuild build{.read = read, .fit = std::move(*fit), .plan = std::nullopt};
    const auto folder = scenario::folder_of(read.file_name);
    auto ready = outage::make_ready(read.scenario, folder);
    if (ready) {
        build.plan = outage::plan_outage(*ready);
        const auto members = sizing::members_of(
            read.scenario, folder, std::make_shared<const outage::Ready>(std::move(*ready)), seed);
        sizing::MemberRuns runs(members);
        build.figures = members.figures(runs.ends(), sizing::goal_of(read.scenario));
    } else {
        build.why_no_plan = "the outage cannot be planned: " + units::print(ready.error().front());
    }
    if (auto starts = answers::compared_starts(cold.scenario())) {
        build.starts = std::move(*starts);
    } else {
        build.why_no_starts =
            "the starts cannot be planned: " + units::print(starts.error().front());
    }
    return build;
}

}  // namespace

void add_compare_options(CLI::App& command, Request& request) {
    command.add_option("OTHER", request.other_file, "The new build; FILE is the old one")
        ->required();
}

units::Result<answers::Answer> ask_compare(const scenario::ReadScenario& read,
                                           const Request& request) {
    auto overrides = overrides_of(request.set);
    if (!overrides) {
        return units::fail(std::move(overrides.error()));
    }
    auto other = scenario::read_scenario_file(request.other_file, std::move(*overrides));
    if (!other) {
        return units::fail(other.error());
    }
    scenario::set_aside(other->scenario);
    const auto old_build = build_of(read, request.seed);
    const auto new_build = build_of(*other, request.seed);
    if (!old_build || !new_build) {
        units::Errors errors;
        for (const auto* build : {&old_build, &new_build}) {
            if (!*build) {
                errors.insert(errors.end(), build->error().begin(), build->error().end());
            }
        }
        return units::fail(std::move(errors));
    }
    return answers::compare_answer(*old_build, *new_build);
}

}  // namespace command_line
