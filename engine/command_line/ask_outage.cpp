#include "command_line/ask_outage.hpp"

#include <CLI/CLI.hpp>

#include "checks/storage.hpp"
#include "outage/plan.hpp"
#include "outage/ready.hpp"
#include "outage/weathers.hpp"
#include "outage/work.hpp"
#include "report/outage_answer.hpp"
#include "scenario/file.hpp"

namespace command_line {

namespace {

// Enough for a chance within 7 points, where they take no longer than a reader notices.
int usual_weathers(const outage::Ready& ready) {
    constexpr int usual = 200;
    constexpr int too_few = 30;  // say too little of a chance
    const bool soon = ready.sky && ready.outage.lasts <= 10.0 * units::day;
    const int reached = soon ? outage::weathers_within_reach(ready, usual, 0) : 0;
    return reached < too_few ? 0 : reached;
}

// A day's yield is cheap: percentiles to a point or two.
constexpr int weathers_of_recharge = 2000;

}  // namespace

void add_outage_options(CLI::App& command, Request& request) {
    command
        .add_option("--weathers", request.weathers,
                    "Runs the outage under this many chance weathers and tells\n"
                    "how many of them it lasts through, such as 200")
        ->check(CLI::Range(0, 100000))
        ->type_name("N");
    command.add_flag("--after-storage", request.after_storage,
                     "Starts with the charge that [storage] leaves in the packs");
}

units::Result<report::Answer> ask_outage(const scenario::ReadScenario& read,
                                         const Request& request) {
    auto scenario = read.scenario;
    scenario::Assumptions from_storage;
    if (request.after_storage) {
        const auto stored = checks::storage(scenario);
        if (!stored) {
            return units::fail(stored.error());
        }
        scenario = checks::after_storage(std::move(scenario), *stored);
        from_storage = stored->assumptions;
    }
    const auto ready = outage::make_ready(scenario, scenario::folder_of(read.file_name));
    if (!ready) {
        return units::fail(ready.error());
    }
    const auto plan = outage::plan_outage(*ready);
    std::optional<report::Chances> chances;
    const int weathers = request.weathers.value_or(usual_weathers(*ready));
    if (weathers > 0) {
        chances = report::chances_in_weathers(scenario, *ready, weathers, request.seed);
    }
    if (chances && ready->sky && ready->sky->hours) {
        chances->of = "start dates of the weather file";
    }
    auto answer =
        report::outage_answer(scenario, plan, plan.more_packs, chances,
                              outage::recharge_of(*ready, weathers_of_recharge, request.seed));
    answer.assumptions.insert(answer.assumptions.end(), from_storage.begin(), from_storage.end());
    return answer;
}

}  // namespace command_line
