#include "outage/idle_findings.hpp"

#include <algorithm>
#include <string>
#include <vector>

#include <fmt/format.h>
#include <fmt/ranges.h>

#include "units/text.hpp"

namespace outage {

using namespace units;
using scenario::Outlet;

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

}  // namespace

scenario::Findings idle_findings(const demand::Demand& demand, const inverter::Model& inverter,
                                 const Course& course) {
    scenario::Findings findings;
    if (demand.search_threshold) return findings;  // it sleeps when it has little to feed
    demand::Spans large;
    demand::Spans any;
    for (const demand::PlannedLoad& load : demand.loads) {
        if (load.from != Outlet::ac) continue;
        any = demand::either(any, load.may_run);
        if (running(load) > small_load) large = demand::either(large, load.may_run);
    }
    const Power idle = inverter.losses.idle;
    const Awake awake(course, idle);
    const Duration unused = awake.within(demand::without(demand.inverter_on, any));
    if (unused >= hour)
        findings.push_back(
            {.severity = scenario::Severity::note,
             .where = "inverter",
             .text = fmt::format("stays on for {} with nothing to feed: {} idle, {} in all",
                                 show(unused), show(idle), show(idle * unused)),
             .mend = "switch it off in those hours and list them as off",
             .source = "inverter/method.md (1)"});
    const demand::Spans alone = demand::common(demand::without(demand.inverter_on, large), any);
    std::vector<std::string> kept_on_by;
    Energy useful{};
    for (const demand::PlannedLoad& load : demand.loads) {
        if (load.from != Outlet::ac) continue;
        Energy energy{};
        for (const demand::Strand& strand : load.strands)
            energy += static_cast<double>(strand.items) * strand.of_power.value() *
                      load.power.likely * awake.within(demand::common(strand.on, alone));
        if (energy > Energy{}) kept_on_by.push_back(load.name);
        useful += energy;
    }
    const Duration stood = awake.within(alone);
    const Energy spent = idle * stood;
    if (!kept_on_by.empty() && 2.0 * spent >= useful)
        findings.push_back(
            {.severity = scenario::Severity::note,
             .where = "inverter",
             .text = fmt::format(
                 "stays on for {} only for {}: {} idle takes {} beside the {} of use", show(stood),
                 fmt::join(kept_on_by, ", "), show(idle), show(spent), show(useful)),
             .mend = "feed it from a 12 V or USB outlet and switch the inverter off in those hours",
             .source = "inverter/method.md (1)"});
    return findings;
}

}  // namespace outage
