#include "questions/compare.hpp"

#include <map>
#include <memory>
#include <tuple>

#include "outage/ready.hpp"
#include "questions/shared/draws.hpp"
#include "questions/shared/in_its_room.hpp"
#include "questions/shared/starts.hpp"
#include "scenario/file/file.hpp"
#include "scenario/file/set_aside.hpp"
#include "scenario/keys/listing.hpp"
#include "sizing/builds/builds.hpp"
#include "sizing/member_runs.hpp"
#include "sizing/members_of.hpp"

namespace questions {

namespace {

using words::said;

constexpr starting::Utilised most_told = starting::Utilised(1000.0);  // as starting::Utilised says

units::Errors in_file(units::Errors errors, const std::string& file) {
    for (auto& error : errors) {
        if (error.file.empty()) {
            error.file = file;
        }
    }
    return errors;
}

units::Errors of_both(const units::Errors& old_errors, const units::Errors& new_errors) {
    units::Errors errors = old_errors;
    errors.insert(errors.end(), new_errors.begin(), new_errors.end());
    return errors;
}

units::Result<ComparedBuild> build_of(const scenario::ReadScenario& read, std::uint64_t seed) {
    // What is taken for the room stands among the plan's assumptions.
    const auto cold = at_the_coldest(read);
    const auto draws = draws_of(cold.scenario);
    if (!draws) {
        return units::fail(in_file(draws.error(), read.file_name));
    }
    auto fit = fitting::fit(cold.scenario, *draws);
    if (!fit) {
        return units::fail(in_file(fit.error(), read.file_name));
    }
    ComparedBuild build{.read = read, .fit = std::move(*fit), .plan = std::nullopt};
    const auto folder = scenario::folder_of(read.file_name);
    auto ready = outage::make_ready(read.scenario, folder);
    if (ready) {
        build.plan = outage::plan_outage(*ready);
        const auto members = sizing::members_of(
            read.scenario, folder, std::make_shared<const outage::Ready>(std::move(*ready)), seed);
        sizing::MemberRuns runs(members);
        build.figures = members.figures(runs.ends(), sizing::goal_of(read.scenario));
    } else {
        build.why_no_plan =
            said<"the outage cannot be planned: {fault}">(in_words(ready.error().front()));
    }
    if (auto starts = compared_starts(cold.scenario)) {
        build.starts = std::move(*starts);
    } else {
        build.why_no_starts =
            said<"the starts cannot be planned: {fault}">(in_words(starts.error().front()));
    }
    return build;
}

std::vector<ChangedKey> keys_that_differ(const scenario::ReadScenario& before,
                                         const scenario::ReadScenario& after) {
    std::map<std::string, ChangedKey::Value> old_values;
    for (const auto& key : scenario::listing(before)) {
        old_values[key.key] = {key.value, key.said};
    }
    std::vector<ChangedKey> changes;
    std::set<std::string> seen;
    for (const auto& key : scenario::listing(after)) {
        seen.insert(key.key);
        const auto old = old_values.find(key.key);
        const auto was = old == old_values.end() ? ChangedKey::Value() : old->second;
        if (was.written != key.value) {
            changes.push_back({key.key, was, {key.value, key.said}});
        }
    }
    for (const auto& [key, value] : old_values) {
        if (!seen.contains(key) && !value.written.empty()) {
            changes.push_back({key, value, {}});
        }
    }
    return changes;
}

}  // namespace

CompareFound compared(ComparedBuild old_build, ComparedBuild new_build) {
    CompareFound found{
        .old_build = std::move(old_build),
        .new_build = std::move(new_build),
        .changes = {},
        .dirty = {},
        .moved = {},
        .keys = {},
    };
    const auto& [before, after] = std::tie(found.old_build, found.new_build);
    found.changes = fitting::changes_between(before.read.scenario, after.read.scenario);
    for (const fitting::Change& change : found.changes) {
        found.dirty.merge(fitting::dirtied_by(change));
    }
    found.moved = fitting::moved_verdicts(before.fit, after.fit);
    found.keys = keys_that_differ(before.read, after.read);
    return found;
}

units::Result<std::vector<ComparedStart>> compared_starts(const scenario::Scenario& scenario) {
    const auto planned = planned_starts(scenario);
    if (!planned) {
        return units::fail(planned.error());
    }
    std::vector<ComparedStart> starts;
    for (const starting::LoadStart& load : planned->plan.loads) {
        if (load.refused) {
            starts.push_back({.load = load.name,
                              .verdict = starting::StartVerdict::will_not_start,
                              .binding = starting::Constraint::voltage_class,
                              .worst = most_told});
            continue;
        }
        ComparedStart start{.load = load.name,
                            .verdict = load.judged.verdict,
                            .binding = load.judged.binding,
                            .worst = {}};
        for (const auto& use : load.judged.used) {
            start.worst = std::max(start.worst, use.used.high());
        }
        starts.push_back(std::move(start));
    }
    return starts;
}

units::Result<CompareFound> find(const scenario::ReadScenario& read, const CompareAsked& asked,
                                 const How& how) {
    auto old_build = build_of(read, how.seed);
    auto new_build = build_of(asked.with, how.seed);
    if (old_build && new_build) return compared(std::move(*old_build), std::move(*new_build));
    return units::fail(of_both(old_build ? units::Errors{} : old_build.error(),
                               new_build ? units::Errors{} : new_build.error()));
}

}  // namespace questions
