#include "outage/told/idle_findings.hpp"

#include <algorithm>
#include <vector>

#include "units/said.hpp"

namespace outage {

using namespace units;
using scenario::Outlet;
using words::Said;
using words::said;

namespace {

// Below this an inverter that sleeps until it is needed may never wake: 5 to 40 W, common practice,
// no source.
constexpr Power small_load = 40.0 * watt;

Power running(const demand::PlannedLoad& load) {
    return static_cast<double>(load.count) * load.power.likely;
}

// How long the inverter was awake within spans: of each interval the part in which it drew idle.
class Awake {
  public:
    Awake(const Course& course, Power idle) : course_(course), idle_(idle) {}

    [[nodiscard]] Duration within(const demand::Spans& spans) const {
        Duration sum{};
        auto span = spans.begin();
        for (const Interval& interval : course_.intervals) {
            while (span != spans.end() && span->until <= interval.from)
                ++span;
            Duration overlap{};
            for (auto each = span; each != spans.end() && each->from < interval.to; ++each)
                overlap += std::min(each->until, interval.to) - std::max(each->from, interval.from);
            sum += part_of(interval) * overlap;
        }
        return sum;
    }

  private:
    const Course& course_;
    Power idle_;

    [[nodiscard]] double part_of(const Interval& interval) const {
        const Energy whole = idle_ * (interval.to - interval.from);
        return whole > Energy{} ? std::min(1.0, double(interval.flows.idle / whole)) : 0.0;
    }
};

// The hours of what the inverter feeds: any of it, and what is large enough to wake it.
struct Fed {
    demand::Spans any;
    demand::Spans large;
};

Fed fed(const demand::Demand& demand) {
    Fed by;
    for (const demand::PlannedLoad& load : demand.loads) {
        if (load.from != Outlet::ac) continue;
        by.any = demand::either(by.any, load.may_run);
        if (running(load) > small_load) by.large = demand::either(by.large, load.may_run);
    }
    return by;
}

Energy used(const demand::PlannedLoad& load, const Awake& awake, const demand::Spans& within) {
    Energy energy{};
    for (const demand::Strand& strand : load.strands)
        energy += static_cast<double>(strand.items) * strand.of_power.value() * load.power.likely *
                  awake.within(demand::common(strand.on, within));
    return energy;
}

scenario::Finding on_inverter(Said text, Said mend) {
    return {.severity = scenario::Severity::note,
            .where = said<"inverter">(),
            .text = std::move(text),
            .mend = std::move(mend),
            .source = said<"{source}">("inverter/method.md (1)")};
}

void find_unused(const demand::Demand& demand, const Fed& by, Power idle, const Awake& awake,
                 scenario::Findings& findings) {
    const Duration unused = awake.within(demand::without(demand.inverter_on, by.any));
    if (unused < hour) return;
    findings.push_back(
        on_inverter(said<"stays on for {time} with nothing to feed: {idle} idle, {energy} in all">(
                        unused, idle, idle * unused),
                    said<"switch it off in those hours and list them as off">()));
}

// Hours in which it stays on for small loads alone, and takes half of what they use or more.
void find_for_little(const demand::Demand& demand, const Fed& by, Power idle, const Awake& awake,
                     scenario::Findings& findings) {
    const demand::Spans alone =
        demand::common(demand::without(demand.inverter_on, by.large), by.any);
    std::vector<Said> kept_on_by;
    Energy useful{};
    for (const demand::PlannedLoad& load : demand.loads) {
        if (load.from != Outlet::ac) continue;
        const Energy energy = used(load, awake, alone);
        if (energy > Energy{}) kept_on_by.emplace_back(load.name);
        useful += energy;
    }
    const Duration stood = awake.within(alone);
    const Energy spent = idle * stood;
    if (kept_on_by.empty() || 2.0 * spent < useful) return;
    findings.push_back(on_inverter(
        said<"stays on for {time} only for {loads}: {idle} idle takes {spent} beside the {useful} "
             "of use">(stood, words::joined(std::move(kept_on_by), words::List::Joint::comma), idle,
                       spent, useful),
        said<"feed it from a 12 V or USB outlet and switch the inverter off in those hours">()));
}

}  // namespace

scenario::Findings idle_findings(const demand::Demand& demand, const inverter::Model& inverter,
                                 const Course& course) {
    scenario::Findings findings;
    if (demand.search_threshold) return findings;  // it sleeps when it has little to feed
    const Power idle = inverter.losses.idle;
    const Awake awake(course, idle);
    const Fed by = fed(demand);
    find_unused(demand, by, idle, awake, findings);
    find_for_little(demand, by, idle, awake, findings);
    return findings;
}

}  // namespace outage
