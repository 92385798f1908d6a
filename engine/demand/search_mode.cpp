#include "demand/search_mode.hpp"

#include <algorithm>

#include <fmt/format.h>

#include "units/clock.hpp"
#include "units/text.hpp"

namespace demand {

using namespace units;

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
        findings.push_back(
            {.severity = is_medical(scenario.loads[i]) ? scenario::Severity::stop
                                                       : scenario::Severity::caution,
             .where = "load " + load.name,
             .text = fmt::format(
                 "in search mode the inverter wakes from {} on and {} for the {} of this load "
                 "alone: it gets nothing for {} in all, first from {} to {}",
                 show(*demand.search_threshold), may_wake ? "may not wake" : "does not wake",
                 show(count * load.power.likely), show(total(load.unwoken)),
                 show_clock(starts + first.from), show_clock(starts + first.until)),
             .mend = "switch search mode off, or feed it from a 12 V or USB outlet",
             .source = "[Inverter manuals]"});
    }
    return findings;
}

}  // namespace demand
