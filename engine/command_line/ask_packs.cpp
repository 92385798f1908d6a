#include "command_line/ask_packs.hpp"

#include <algorithm>

#include <CLI/CLI.hpp>
#include <fmt/format.h>

#include "outage/work.hpp"
#include "report/packs_answer.hpp"
#include "report/start_answer.hpp"
#include "scenario/file.hpp"
#include "scenario/most.hpp"

namespace command_line {

namespace {

// Packs that differ are run one by one, which takes ten times as long and more.
constexpr int weathers_of_alike = 1000;
constexpr int weathers_of_unlike = 300;

}  // namespace

void add_packs_options(CLI::App& command, Request& request) {
    command.add_option("MORE", request.more_files,
                       "Further files: then each is answered by one line of JSON");
    command
        .add_option("--threads", request.threads,
                    "Works on this many processors at once (0: as many as there are)")
        ->check(CLI::Range(0, 1024))
        ->type_name("N");
    command
        .add_option("--weathers", request.weathers,
                    "Counts the chances over this many weathers (1,000)")
        ->check(CLI::Range(1, 100000))
        ->type_name("N");
    command.add_option("--most-packs", request.most_packs, "Looks at up to this many packs (16)")
        ->check(CLI::Range(1, scenario::most_packs))
        ->type_name("N");
    command
        .add_option("--most-panels", request.most_panels, "Looks at up to this many panels (12)")
        ->check(CLI::Range(0, scenario::most_panels))
        ->type_name("N");
}

namespace {

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

// As many as the question takes by itself: fewer where a run is long.
int usual_weathers(const sizing::Design& design) {
    constexpr int fewest = 64;
    // A step of one of many lanes, in steps of the clock; measured, DEVELOPERS.md.
    const double step = design.all_alike() ? 0.012 : 1.0;
    // What the walk meets, and a part of the cells for how long they last.
    const double cells = static_cast<double>(design.most_packs) * design.most_panels;
    const double runs = step * (design.most_packs + design.most_panels + 0.25 * cells);
    return outage::weathers_within_reach(
        *design.ready, design.all_alike() ? weathers_of_alike : weathers_of_unlike, fewest, runs);
}

sizing::SweepAsked asked_for(const Request& request, const sizing::Design& design) {
    const int weathers = request.weathers.value_or(usual_weathers(design));
    return {.sequences = weathers,
            .timed = std::min(design.all_alike() ? 256 : 32, (weathers + 2) / 3),
            .seed = request.seed,
            .threads = request.threads,
            .progress = request.progress};
}

// Each load is looked at by itself, so that loads times steps is what takes the time.
units::Errors too_many_loads(const outage::Ready& ready) {
    constexpr double most = 0.5e6;  // steps: some seconds, measured
    const auto loads = static_cast<double>(ready.demand.loads.size());
    const double all = loads * outage::steps_of_a_run(ready);
    if (all <= most) return {};
    return {
        {.where = "load",
         .found = fmt::format("found {:.0f} loads in an outage of {:.0f} steps; to look at each "
                              "of them takes {:.1f} million",
                              loads, outage::steps_of_a_run(ready), all / 1e6),
         .remedy = fmt::format("at most {:.1f} million are worked through: join loads that are "
                               "alike with count, give longer cycles in runs.every, packs that "
                               "are alike, or a shorter outage.lasts",
                               most / 1e6)}};
}

// The build that was found, looked at more closely.
void look_closer(report::PacksFound& found, const scenario::Scenario& scenario,
                 const sizing::Design& design, const Request& request) {
    const auto& build = found.builds.with_these_panels;
    if (!build) return;
    // Where its chance is near the goal.
    const int usual = design.all_alike() ? weathers_of_alike : weathers_of_unlike;
    const int most = outage::weathers_within_reach(*design.ready, 8 * usual, usual / 4,
                                                   design.all_alike() ? 0.3 : 1.0);
    found.at_the_goal = sizing::counted_to_the_goal(design, *build, found.builds.goal, request.seed,
                                                    most, request.threads);
    found.with_inputs = sizing::chances_over_inputs(
        scenario, design, {{build->packs, build->panels}, {build->packs + 1, build->panels}},
        request.seed, request.threads);
}

}  // namespace

units::Result<report::Answer> ask_packs(const scenario::ReadScenario& read,
                                        const Request& request) {
    const auto& scenario = read.scenario;
    if (scenario.loads.empty())
        return units::fail({.where = "load",
                            .found = "no load is described, so that any number of packs is enough",
                            .remedy = "add a [[load]] for each appliance that is to run"});
    auto design = sizing::make_design(scenario, scenario::folder_of(read.file_name),
                                      request.most_packs, request.most_panels);
    const auto starts = report::planned_starts(scenario);
    if (!design || !starts) return units::fail(errors_of(design, starts));
    if (auto errors = too_many_loads(*design->ready); !errors.empty())
        return units::fail(std::move(errors));
    auto swept = sizing::sweep(*design, asked_for(request, *design));
    if (!swept) return units::fail({.where = "", .found = "stopped before its end", .remedy = ""});
    report::PacksFound found{.sweep = std::move(*swept),
                             .starts = report::start_needs(starts->plan),
                             .packs = design->packs,
                             .panels = design->panels,
                             .seed = request.seed};
    found.builds = sizing::builds_of(scenario, *design, found.sweep, found.starts->packs);
    look_closer(found, starts->scenario, *design, request);
    found.influences = sizing::influences(*design->ready);
    found.ladder = sizing::ration_ladder(*design->ready, design->most_packs);
    return report::packs_answer(scenario, *design->ready, found);
}

}  // namespace command_line
