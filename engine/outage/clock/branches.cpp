#include "outage/clock/branches.hpp"

#include <algorithm>
#include <cmath>

#include "units/said.hpp"

namespace outage {

using namespace units;
using words::said;

namespace {

// 12 V gear is made for at least this share of a bus of 12.8 V: 10.5 V, common practice, no source.
constexpr double too_low = 10.5 / 12.8;

// The demand of the 12 V loads of one branch.
demand::Demand of_branch(const demand::Demand& all, const unit::Branch& branch) {
    demand::Demand made{.lasts = all.lasts,
                        .inverter_on = {},
                        .search_threshold = {},
                        .loads = {},
                        .assumptions = {}};
    for (const demand::PlannedLoad& load : all.loads)
        if (load.from != scenario::Outlet::ac &&
            std::ranges::find(branch.feeds, load.name) != branch.feeds.end())
            made.loads.push_back(load);
    return made;
}

}  // namespace

BranchEnd at_end_of(Resistance resistance, Voltage bus, Power power) {
    const double r = resistance / ohm;
    const double v = bus / volt;
    const double p = power / watt;
    if (!(r > 0.0) || !(p > 0.0)) return {.lost = {}, .at_load = bus};
    const double under_root = v * v - 4.0 * r * p;
    // the form that keeps its digits where the drop is small
    const double current = under_root > 0.0 ? 2.0 * p / (v + std::sqrt(under_root)) : 0.5 * v / r;
    return {.lost = current * current * r * watt,
            .at_load = (v - current * r) * volt,
            .possible = under_root >= 0.0};
}

std::vector<demand::DemandStep> with_branches(std::vector<demand::DemandStep> steps,
                                              const demand::Demand& demand, demand::Case which,
                                              const std::vector<unit::Branch>& branches,
                                              Voltage bus) {
    for (const unit::Branch& branch : branches) {
        const demand::Demand own = of_branch(demand, branch);
        if (own.loads.empty()) continue;
        const auto drawn = demand::demand_steps(own, which);
        std::size_t at = 0;
        for (demand::DemandStep& step : steps) {
            while (at + 1 < drawn.size() && drawn[at + 1].from <= step.from)
                ++at;
            const Power lost = at_end_of(branch.resistance, bus, drawn[at].direct).lost;
            step.direct += lost;
            step.in_branches += lost;
        }
    }
    return steps;
}

scenario::Findings branch_findings(const demand::Demand& demand,
                                   const std::vector<unit::Branch>& branches, Voltage bus) {
    scenario::Findings findings;
    for (const unit::Branch& branch : branches) {
        const demand::Demand own = of_branch(demand, branch);
        if (own.loads.empty()) continue;
        Power most{};
        for (const demand::DemandStep& step : demand::demand_steps(own, demand::Case::high))
            most = std::max(most, step.direct);
        const BranchEnd end = at_end_of(branch.resistance, bus, most);
        if (end.possible && end.at_load >= too_low * bus) continue;
        findings.push_back(
            {.severity = end.possible ? scenario::Severity::caution : scenario::Severity::stop,
             .where = said<"circuit {circuit}">(branch.name),
             .text =
                 end.possible
                     ? said<"at {power} its end sees {voltage} of the {bus} at the bus: what "
                            "is connected there may switch off by itself">(most, end.at_load, bus)
                     : said<"its wires cannot carry {power} at {bus}: the voltage collapses">(most,
                                                                                              bus),
             .mend = said<"thicken or shorten its wires: candlemark wiring says how">(),
             .source = said<"{source}">("outage/method.md (14)")});
    }
    return findings;
}

}  // namespace outage
