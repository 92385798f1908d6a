#include "estimate/stretches.hpp"

#include <algorithm>
#include <cassert>
#include <cmath>
#include <memory>

#include "battery/percent.hpp"
#include "outage/clock.hpp"
#include "outage/ready.hpp"

namespace estimate {

using namespace units;

namespace {

// With a step of its own at each of these times, so that the clock looks there.
std::vector<demand::DemandStep> looked_at(std::vector<demand::DemandStep> steps,
                                          std::span<const Duration> at) {
    for (const Duration& time : at) {
        const auto next = std::ranges::upper_bound(steps, time, {}, &demand::DemandStep::from);
        if (next == steps.begin() || std::prev(next)->from == time) continue;
        demand::DemandStep step = *std::prev(next);
        step.from = time;
        steps.insert(next, step);
    }
    return steps;
}

}  // namespace

outage::Course run_stretch(const chance::World& world, const chance::Lived& lived,
                           const outage::PackKinds& kinds, Duration from, Duration length,
                           std::span<const Duration> looked, outage::Keep keep) {
    const auto& ready = world.ready();
    auto unit = outage::unit_of(kinds, ready.main_path);
    unit.inverter = lived.inverter;
    unit.main_fuse = ready.units[static_cast<std::size_t>(outage::End::likely)].main_fuse;
    const auto steps = looked_at(from_then_on(lived.steps, from), looked);
    const auto sun = from_then_on(lived.sun, from);
    const double since = (ready.midnight - from + 400.0 * day) / second;
    const Duration midnight = std::fmod(since, 86'400.0) * second;
    return outage::run(unit, steps, sun, length, midnight, keep);
}

outage::PackKind with_charge(outage::PackKind kind, std::optional<StateOfCharge> charge) {
    if (!charge) return kind;
    const auto at = [&](const battery::PackModel& model) {
        auto made = std::make_shared<battery::PackModel>(model);
        made->at_start = battery::rested_with(model.capacity, *charge);
        return made;
    };
    kind.model = at(*kind.model);
    for (auto& of_day : kind.days)
        of_day.model = at(*of_day.model);
    return kind;
}

Energy taken_between(const outage::Course& course, Duration from, Duration until) {
    Energy taken{};
    for (std::size_t i = 0; i + 1 < course.trace.size(); ++i) {
        const Duration begins = std::max(from, course.trace[i].at);
        const Duration ends = std::min(until, course.trace[i + 1].at);
        if (ends > begins) taken += course.trace[i].sun_taken * (ends - begins);
    }
    return taken;
}

const outage::TracePoint& point_at(const outage::Course& course, Duration at) {
    assert(!course.trace.empty());
    const auto next = std::ranges::upper_bound(course.trace, at + as_good_as_at_once, {},
                                               &outage::TracePoint::at);
    return next == course.trace.begin() ? course.trace.front() : *std::prev(next);
}

Ways ways_of(const outage::PackKinds& kinds) {
    double siemens = 0.0;
    double inner_siemens = 0.0;
    for (const outage::PackKind& kind : kinds) {
        const double inner = std::max(1e-9, double(kind.model->inner / ohm));
        siemens += kind.count / (inner + double(kind.model->lead / ohm));
        inner_siemens += kind.count / inner;
    }
    if (!(siemens > 0.0)) return {};
    return {.all = 1.0 / siemens * ohm, .inside = 1.0 / inner_siemens * ohm};
}

}  // namespace estimate
