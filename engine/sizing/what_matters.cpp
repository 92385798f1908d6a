#include "sizing/what_matters.hpp"

#include <algorithm>

#include <fmt/format.h>

#include "inverter/model.hpp"
#include "outage/clock.hpp"
#include "outage/demand.hpp"
#include "units/text.hpp"

namespace sizing {

namespace {

using namespace units;

constexpr auto likely = static_cast<std::size_t>(outage::End::likely);
constexpr outage::Keep to_the_first_failure{.trace = false, .after_failure = false};

struct Run {
    Duration lasts{};
    bool survives = false;
};

Run run_of(const outage::Ready& ready, const outage::Unit& unit,
           std::span<const outage::DemandStep> steps, outage::End sky = outage::End::likely) {
    const auto course = outage::run(unit, steps, ready.sun[static_cast<std::size_t>(sky)],
                                    ready.outage.lasts, ready.midnight, to_the_first_failure);
    return {.lasts = course.lasts, .survives = course.survives};
}

Run run_of(const outage::Ready& ready, const outage::Demand& demand) {
    return run_of(ready, ready.units[likely], outage::steps_of(ready, demand, outage::End::likely));
}

void add_loads(std::vector<Influence>& found, const outage::Ready& ready) {
    for (std::size_t i = 0; i < ready.demand.loads.size(); ++i) {
        const auto& load = ready.demand.loads[i];
        if (!(load.power.low < load.power.high) || load.strands.empty()) continue;
        const auto with = [&](Power power) {
            auto demand = ready.demand;
            demand.loads[i].power.likely = power;
            return run_of(ready, demand).lasts;
        };
        found.push_back({.input = load.name,
                         .what = fmt::format("{} to {}; {}", show(load.power.low, 2),
                                             show(load.power.high, 2), load.power.from_what),
                         .load = i,
                         .is_load = true,
                         .at_worst = with(load.power.high),
                         .at_best = with(load.power.low)});
    }
}

void add_idle(std::vector<Influence>& found, const outage::Ready& ready) {
    const auto& unit = ready.units[likely];
    if (!unit.inverter || !(unit.inverter->idle_low < unit.inverter->idle_high)) return;
    const auto with = [&](Power idle) {
        auto changed = unit;
        changed.inverter = inverter::with_idle(*unit.inverter, idle);
        return run_of(ready, changed, ready.steps[likely]).lasts;
    };
    found.push_back({.input = "inverter with nothing plugged in",
                     .what = fmt::format("{} to {}", show(unit.inverter->idle_low, 2),
                                         show(unit.inverter->idle_high, 2)),
                     .at_worst = with(unit.inverter->idle_high),
                     .at_best = with(unit.inverter->idle_low)});
}

void add_sky(std::vector<Influence>& found, const outage::Ready& ready) {
    if (ready.sun[likely].empty()) return;
    const auto under = [&](outage::End sky) {
        return run_of(ready, ready.units[likely], ready.steps[likely], sky).lasts;
    };
    found.push_back({.input = "the sky",
                     .what = "one in ten so dull, or so bright",
                     .at_worst = under(outage::End::earliest),
                     .at_best = under(outage::End::latest)});
}

}  // namespace

std::vector<Influence> influences(const outage::Ready& ready) {
    std::vector<Influence> found;
    add_loads(found, ready);
    add_idle(found, ready);
    add_sky(found, ready);
    std::erase_if(found, [](const Influence& one) { return one.spread() < 1.0 * minute; });
    std::ranges::stable_sort(
        found, [](const Influence& a, const Influence& b) { return a.spread() > b.spread(); });
    return found;
}

}  // namespace sizing
