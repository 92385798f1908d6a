#include "demand/search_mode.hpp"

#include <algorithm>

#include "units/said.hpp"

namespace demand {

using namespace units;
using words::said;

namespace {

// Where the outlets together draw something, and less than the threshold.
Spans too_little(const std::vector<DemandStep>& steps, Power threshold, Duration lasts) {
    Spans spans;
    for (std::size_t i = 0; i < steps.size(); ++i) {
        const DemandStep& step = steps[i];
        if (!step.inverter_on || !(step.ac < threshold)) continue;
        const Duration until = i + 1 < steps.size() ? steps[i + 1].from : lasts;
        if (!spans.empty() && spans.back().until == step.from)
            spans.back().until = until;
        else
            spans.push_back({.from = step.from, .until = until});
    }
    return spans;
}

}  // namespace

void leave_asleep(Demand& demand) {
    if (!demand.search_threshold) return;
    Demand awake = demand;
    awake.search_threshold.reset();
    const Spans asleep =
        too_little(demand_steps(awake, Case::likely), *demand.search_threshold, demand.lasts);
    for (PlannedLoad& load : demand.loads) {
        if (load.from != scenario::Outlet::ac) continue;
        for (Strand& strand : load.strands) {
            load.unwoken = either(load.unwoken, common(strand.on, asleep));
            strand.on = without(strand.on, asleep);
        }
    }
}

std::vector<DemandStep> with_search_mode(std::vector<DemandStep> steps, Power threshold) {
    std::vector<DemandStep> made;
    for (DemandStep& step : steps) {
        if (step.inverter_on && step.ac < threshold) {
            step.ac = {};
            step.ac_reactive = {};
            step.asleep = true;
        }
        if (!made.empty()) {
            DemandStep as_before = made.back();
            as_before.from = step.from;
            if (as_before == step) continue;
        }
        made.push_back(step);
    }
    return made;
}

scenario::Findings search_mode_findings(const scenario::Scenario& scenario, const Demand& demand) {
    scenario::Findings findings;
    if (!demand.search_threshold) return findings;
    const LocalTime starts = scenario.outage.starts;
    for (std::size_t i = 0; i < demand.loads.size(); ++i) {
        const PlannedLoad& load = demand.loads[i];
        if (load.unwoken.empty()) continue;
        const Span& first = load.unwoken.front();
        const double count = load.count;
        const bool may_wake = count * load.power.high >= *demand.search_threshold;
        const Power draw = count * load.power.likely;
        const auto from = moment(starts + first.from, words::Moment::Form::weekday_date_clock);
        const auto until = moment(starts + first.until, words::Moment::Form::weekday_date_clock);
        findings.push_back(
            {.severity = is_medical(scenario.loads[i]) ? scenario::Severity::stop
                                                       : scenario::Severity::caution,
             .where = said<"load {load}">(load.name),
             .text = may_wake
                         ? said<"in search mode the inverter wakes from {threshold} on and may not "
                                "wake for the {draw} of this load alone: it gets nothing for "
                                "{time} in all, first from {from} to {until}">(
                               *demand.search_threshold, draw, total(load.unwoken), from, until)
                         : said<"in search mode the inverter wakes from {threshold} on and does "
                                "not wake for the {draw} of this load alone: it gets nothing for "
                                "{time} in all, first from {from} to {until}">(
                               *demand.search_threshold, draw, total(load.unwoken), from, until),
             .mend = said<"switch search mode off, or feed it from a 12 V or USB outlet">(),
             .source = said<"{source}">("[Inverter manuals]")});
    }
    return findings;
}

}  // namespace demand
