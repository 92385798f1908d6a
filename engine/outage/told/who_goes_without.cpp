#include "outage/told/who_goes_without.hpp"

#include <algorithm>
#include <set>

#include "outage/ready.hpp"

namespace outage {

namespace {

using namespace units;

// What a strand has of a stretch: how long it is on within it, from when to when.
struct Within {
    Duration on{};
    Duration from = std::numeric_limits<double>::infinity() * second;
    Duration to{};
};

Within within(const demand::Spans& spans, Duration from, Duration to) {
    Within found;
    auto span = std::ranges::upper_bound(spans, from, {}, &demand::Span::until);
    for (; span != spans.end() && span->from < to; ++span) {
        const Duration begins = std::max(from, span->from);
        const Duration ends = std::min(to, span->until);
        if (!(ends > begins)) continue;
        found.on += ends - begins;
        found.from = std::min(found.from, begins);
        found.to = std::max(found.to, ends);
    }
    return found;
}

bool is_about(const Without& out, const demand::PlannedLoad& load, std::size_t index) {
    if (out.part == everything) return true;
    if (out.part == the_inverter) return load.from == scenario::Outlet::ac;
    return out.part == index;
}

}  // namespace

void tell_who_goes_without(std::vector<LoadUse>& uses, const demand::Demand& demand,
                           const Course& course) {
    auto out = course.out;
    std::ranges::stable_sort(out, {}, &Without::from);
    for (std::size_t i = 0; i < uses.size(); ++i) {
        const demand::PlannedLoad& load = demand.loads[i];
        Duration missing{};  // of all items
        Duration reached{};  // stretches of one load may overlap
        for (const Without& stretch : out) {
            if (!is_about(stretch, load, i)) continue;
            const Duration begins = std::max(stretch.from, reached);
            reached = std::max(reached, stretch.to);
            Within of_all;
            for (const demand::Strand& strand : load.strands) {
                const Within own = within(strand.on, begins, stretch.to);
                missing += static_cast<double>(strand.items) * own.on;
                of_all.on += own.on;
                of_all.from = std::min(of_all.from, own.from);
                of_all.to = std::max(of_all.to, own.to);
            }
            if (of_all.on > Duration{})
                uses[i].goes_without.push_back({of_all.from, of_all.to, stretch.why});
        }
        uses[i].fed = uses[i].on_time - missing / static_cast<double>(load.count);
    }
}

std::vector<LadderStep> ladder_of(const Ready& ready, const Course& all) {
    const auto likely = static_cast<std::size_t>(End::likely);
    std::set<int> ranks;
    for (const demand::PlannedLoad& load : ready.demand.loads)
        ranks.insert(load.rank);
    std::vector<LadderStep> ladder;
    for (const int rank : ranks) {
        LadderStep step{.priority = rank, .lasts = all.lasts, .survives = all.survives};
        if (!all.survives && rank != *ranks.rbegin()) {
            auto demand = ready.demand;
            bool through_inverter = false;
            for (demand::PlannedLoad& load : demand.loads) {
                if (load.rank > rank)
                    load.strands.clear();
                else
                    through_inverter = through_inverter || load.from == scenario::Outlet::ac;
            }
            if (!through_inverter) demand.inverter_on.clear();
            const auto guarded = guarded_loads(ready, demand, End::likely);
            const auto course =
                run(ready.units[likely], steps_of(ready, demand, End::likely), ready.sun[likely],
                    ready.outage.lasts, ready.midnight, {.trace = false, .after_failure = false},
                    nullptr, or_none(guarded));
            step.lasts = course.lasts;
            step.survives = course.survives;
        }
        ladder.push_back(step);
    }
    return ladder;
}

}  // namespace outage
