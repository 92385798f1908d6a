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

// Under how many weathers builds are tried, and under how many of them those that do not last
// through are timed.
struct Weathers {
    int tried = 0;
    int timed = 0;
};

Weathers with_their_timed(const sizing::Design& design, int tried) {
    return {.tried = tried, .timed = std::min(design.all_alike() ? 256 : 32, (tried + 2) / 3)};
}

// The fewest, and the fewest where those take too long as well.
constexpr int fewest_weathers = 64;
constexpr Weathers scarce{.tried = 32, .timed = 6};

// Steps that the packs and panels may take by themselves: under five seconds at 0.12 us a step,
// measured over packs that differ in an outage of 60 days.
constexpr double most_steps = 40e6;

// A step of one of many lanes, in steps of the clock; measured, DEVELOPERS.md.
double cost_of_a_step(const sizing::Design& design) {
    return design.all_alike() ? 0.012 : 1.0;
}

double cells_of(const sizing::Design& design) {
    return static_cast<double>(design.most_packs) * design.most_panels;
}

// At most, in steps of the clock: what the walk meets, and the cells that are timed. Without panels
// every weather is the same.
double steps_under(const sizing::Design& design, const Weathers& weathers) {
    const int tried = design.most_panels > 0 ? weathers.tried : 1;
    const double walks = static_cast<double>(tried) * (design.most_packs + design.most_panels);
    const double runs = walks + weathers.timed * cells_of(design);
    return outage::steps_of_a_run(*design.ready) * cost_of_a_step(design) * runs;
}

// As many as the question takes by itself: fewer where a run is long.
Weathers usual_weathers(const sizing::Design& design) {
    if (steps_under(design, with_their_timed(design, fewest_weathers)) > most_steps) return scarce;
    // What the walk meets, and a part of the cells for how long they last.
    const double runs =
        cost_of_a_step(design) * (design.most_packs + design.most_panels + 0.25 * cells_of(design));
    const int usual = design.all_alike() ? weathers_of_alike : weathers_of_unlike;
    return with_their_timed(
        design, outage::weathers_within_reach(*design.ready, usual, fewest_weathers, runs));
}

// What takes too long under the fewest weathers is left to those who ask for it.
units::Errors too_long(const Request& request, const sizing::Design& design) {
    const double all = steps_under(design, scarce);
    if (request.weathers || all <= most_steps) return {};
    return {{.where = "outage.lasts",
             .found = fmt::format("found an outage of {:.0f} steps; to try up to {} packs with up "
                                  "to {} panels under {} weathers takes {:.0f} million",
                                  outage::steps_of_a_run(*design.ready), design.most_packs,
                                  design.most_panels, scarce.tried, all / 1e6),
             .remedy = fmt::format(
                 "at most {:.0f} million are worked through unasked: give longer cycles in "
                 "runs.every, packs that are alike, a shorter outage.lasts, or smaller numbers "
                 "for --most-packs and --most-panels; or wait for it with --weathers {}",
                 most_steps / 1e6, scarce.tried)}};
}

sizing::SweepAsked asked_for(const Request& request, const sizing::Design& design) {
    const Weathers weathers =
        request.weathers ? with_their_timed(design, *request.weathers) : usual_weathers(design);
    return {.sequences = weathers.tried,
            .timed = weathers.timed,
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
    if (auto errors = too_long(request, *design); !errors.empty())
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
