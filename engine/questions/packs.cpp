#include "questions/packs.hpp"

#include <algorithm>

#include "outage/clock/work.hpp"
#include "questions/shared/starts.hpp"
#include "scenario/file/file.hpp"
#include "sizing/members_of.hpp"
#include "words/said.hpp"

namespace questions {

namespace {

using words::said;
using words::with_decimals;

// What is wrong with either, each thing once.
template <class A, class B>
units::Errors errors_of(const units::Result<A>& a, const units::Result<B>& b) {
    units::Errors errors;
    if (!a) errors = a.error();
    if (b) return errors;
    for (const auto& error : b.error())
        if (std::ranges::find(errors, error) == errors.end()) errors.push_back(error);
    return errors;
}

// Steps that the question may take by itself: under five seconds at 0.08 us a step, measured over
// packs that differ in an outage of 50 days.
constexpr double most_steps = 60e6;

// What the staircases meet at most, or each build where nobody knows how long it lasts, though most
// of these end long before what is looked at; each rung of the ladder, and what matters, about as
// much as a build or two each.
double runs_of(const LookedAt& most, const outage::Ready& ready) {
    constexpr double share_of_a_run = 0.25;
    const double builds = ready.outage.open_ended
                              ? share_of_a_run * most.packs * (most.panels + 1.0)
                              : most.packs + most.panels;
    return builds + 4.0 +
           2.0 * static_cast<double>(std::min<std::size_t>(ready.demand.loads.size(), 8));
}

double steps_of(const LookedAt& most, const outage::Ready& ready, int members) {
    return outage::member_steps_of_a_run(ready) * members * runs_of(most, ready);
}

int panels_of(const outage::Ready& ready) {
    int panels = 0;
    if (ready.sky)
        for (const auto& group : ready.sky->groups)
            panels += group.count;
    return panels;
}

// As many as are asked for; where nobody asks, the usual ones. Where nobody knows how long the
// outage lasts each build is run by itself: there fewer, panels first, as far as the question takes
// too long otherwise, but always some more than there are.
LookedAt looked_at(const PacksAsked& asked, const outage::Ready& ready) {
    LookedAt most{.packs = asked.most_packs.value_or(usual_most_packs),
                  .panels = ready.sky ? asked.most_panels.value_or(usual_most_panels) : 0};
    if (!ready.outage.open_ended || asked.members) return most;
    const auto take_fewer = [&](int& count, int least) {
        while (count > least && steps_of(most, ready, chance::lanes) > most_steps) {
            --count;
            most.fewer = true;
        }
    };
    if (ready.sky && !asked.most_panels) take_fewer(most.panels, panels_of(ready) + 1);
    if (!asked.most_packs) take_fewer(most.packs, outage::count_of(ready.kinds) + 4);
    return most;
}

// What takes too long for one block of members is left to those who ask for it.
units::Errors too_long(const PacksAsked& asked, const LookedAt& most, const outage::Ready& ready) {
    const double all = steps_of(most, ready, chance::lanes);
    if (asked.members || all <= most_steps) return {};
    return {
        {.where = "outage.lasts",
         .found = said<"found an outage of {steps} steps; to try up to {packs} packs with up "
                       "to {panels} panels for {members} members takes {all} million">(
             with_decimals(outage::member_steps_of_a_run(ready), 0), most.packs, most.panels,
             chance::lanes, with_decimals(all / 1e6, 0)),
         .remedy = said<"at most {most} million are worked through unasked: give longer cycles in "
                        "runs.every, packs that are alike, a shorter outage.lasts, or smaller "
                        "numbers for --most-packs and --most-panels; or wait for it with --members "
                        "{members}">(with_decimals(most_steps / 1e6, 0), chance::lanes)}};
}

// Each load is looked at by itself, so that loads times steps is what takes the time.
units::Errors too_many_loads(const outage::Ready& ready) {
    constexpr double most = 0.5e6;  // steps: some seconds, measured
    const auto loads = static_cast<double>(ready.demand.loads.size());
    const double all = loads * outage::steps_of_a_run(ready);
    if (all <= most) return {};
    return {
        {.where = "load",
         .found = said<"found {loads} loads in an outage of {steps} steps; to look at each of them "
                       "takes {all} million">(with_decimals(loads, 0),
                                              with_decimals(outage::steps_of_a_run(ready), 0),
                                              with_decimals(all / 1e6, 1)),
         .remedy = said<"at most {most} million are worked through: join loads that are alike with "
                        "count, give longer cycles in runs.every, packs that are alike, or a "
                        "shorter outage.lasts">(with_decimals(most / 1e6, 1))}};
}

// How long each build lasts that is named by itself; running it may move its chance by a member
// where packs differ, and with it the name.
void name_builds(PacksFound& found, sizing::MemberRuns& runs, const sizing::GridAsked& asked) {
    const auto time = [&](int packs, int panels) {
        sizing::time_cell(found.grid, runs, asked, packs, panels);
    };
    if (found.packs >= 1 && found.packs <= asked.most_packs && found.panels <= asked.most_panels) {
        time(found.packs, found.panels);
        found.of_the_file = sizing::build_at(found.scenario, found.grid, found.packs, found.panels);
    }
    bool all_timed = false;
    for (int turn = 0; !all_timed && turn < 4; ++turn) {
        found.builds =
            sizing::builds_of(found.scenario, found.panels, found.grid, found.starts->packs);
        all_timed = true;
        for (const auto& build : sizing::named_of(found.builds)) {
            all_timed = all_timed && build.timed;
            time(build.packs, build.panels);
        }
    }
}

// The loads one by one, for fewer members where there are many, or where every number of packs has
// to be run.
sizing::Ladder ladder_of(const How& how, const PacksFound& found, const std::string& folder,
                         const sizing::MemberRuns& runs, units::Probability goal) {
    constexpr double of_a_rung = 3.0;
    const auto& ready = found.ready;
    const int most = found.looked_at.packs;
    const double steps = outage::member_steps_of_a_run(*ready) * runs.members().count() *
                         of_a_rung * static_cast<double>(ready->demand.loads.size());
    if (steps <= most_steps && !ready->outage.open_ended)
        return sizing::ration_ladder(runs, most, goal, how.threads);
    return sizing::ration_ladder(
        sizing::members_of(found.scenario, folder, ready, how.seed, chance::lanes), most, goal,
        how.threads);
}

void look_closer(PacksFound& found, const chance::Members& members, sizing::MemberRuns& runs,
                 unsigned threads) {
    const auto& build =
        found.builds.with_these_panels ? found.builds.with_these_panels : found.builds.best_chance;
    const int packs = build ? build->packs : found.packs;
    const int panels = build ? build->panels : found.panels;
    found.influences =
        sizing::influences(members, runs.ends(packs, panels, threads), packs, panels, threads);
}

StartNeeds start_needs(const starting::StartPlan& plan) {
    StartNeeds needs;
    for (const auto& start : plan.loads) {
        if (start.refused || !start.packs.surely) {
            needs.never.push_back(start.name);
        } else if (*start.packs.surely > needs.packs) {
            needs.packs = *start.packs.surely;
            needs.load = start.name;
        }
    }
    return needs;
}

units::Error no_load() {
    return {.where = "load",
            .found = said<"no load is described, so that any number of packs is enough">(),
            .remedy = said<"add a [[load]] for each appliance that is to run">()};
}

// The unit, and the starts that its loads ask of it; nothing of the chance yet.
units::Result<PacksFound> prepared(const scenario::ReadScenario& read, const PacksAsked& asked,
                                   const std::string& folder) {
    if (read.scenario.loads.empty()) return units::fail(no_load());
    auto made = outage::make_ready(read.scenario, folder);
    const auto starts = planned_starts(read.scenario);
    if (!made || !starts) return units::fail(errors_of(made, starts));
    if (auto errors = too_many_loads(*made); !errors.empty()) return units::fail(std::move(errors));
    const LookedAt most = looked_at(asked, *made);
    if (auto errors = too_long(asked, most, *made); !errors.empty())
        return units::fail(std::move(errors));
    return PacksFound{.scenario = read.scenario,
                      .ready = std::make_shared<const outage::Ready>(std::move(*made)),
                      .starts = start_needs(starts->plan),
                      .looked_at = most};
}

}  // namespace

units::Result<PacksFound> find(const scenario::ReadScenario& read, const PacksAsked& asked,
                               const How& how) {
    const auto folder = scenario::folder_of(read.file_name);
    auto found = prepared(read, asked, folder);
    if (!found) return found;
    const auto members =
        sizing::members_of(found->scenario, folder, found->ready, how.seed, asked.members);
    sizing::MemberRuns runs(members);
    const sizing::GridAsked cells{.most_packs = found->looked_at.packs,
                                  .most_panels = found->looked_at.panels,
                                  .goal = sizing::goal_of(found->scenario),
                                  .threads = how.threads,
                                  .progress = how.progress};
    auto grid = sizing::grid_of(runs, cells);
    if (!grid)
        return units::fail({.where = "", .found = said<"stopped before its end">(), .remedy = ""});
    found->grid = std::move(*grid);
    found->packs = members.world().packs();
    found->panels = members.world().panels();
    found->seed = how.seed;
    name_builds(*found, runs, cells);
    look_closer(*found, members, runs, how.threads);
    found->ladder = ladder_of(how, *found, folder, runs, cells.goal);
    return found;
}

}  // namespace questions
