#include "estimate/stretches.hpp"

#include <algorithm>
#include <cassert>
#include <cmath>
#include <memory>

#include "battery/cell/percent.hpp"
#include "outage/clock/clock.hpp"
#include "outage/ready.hpp"

namespace estimate {

using namespace units;

namespace {

// What a stretch is run with; what begins with the outage is not copied.
struct Parts {
    outage::Unit unit;
    std::vector<demand::DemandStep> steps;
    std::vector<outage::SunChange> sun;
    Duration midnight{};
    bool from_start = false;
};

Parts parts_of(const chance::World& world, const chance::Lived& lived,
               const outage::PackKinds& kinds, Duration from) {
    const auto& ready = world.ready();
    Parts made{.unit = outage::unit_of(kinds, ready.main_path),
               .steps = {},
               .sun = {},
               .from_start = !(from > Duration{})};
    made.unit.inverter = lived.inverter;
    made.unit.main_fuse = ready.units[static_cast<std::size_t>(outage::End::likely)].main_fuse;
    if (!made.from_start) {
        made.steps = from_then_on(lived.steps, from);
        made.sun = from_then_on(lived.sun, from);
    }
    const double since = (ready.midnight - from + 400.0 * day) / second;
    made.midnight = std::fmod(since, 86'400.0) * second;
    return made;
}

}  // namespace

outage::Course run_stretch(const chance::World& world, const chance::Lived& lived,
                           const outage::PackKinds& kinds, Duration from, Duration length,
                           outage::Keep keep) {
    const Parts parts = parts_of(world, lived, kinds, from);
    return outage::run(parts.unit, parts.from_start ? lived.steps : parts.steps,
                       parts.from_start ? lived.sun : parts.sun, length, parts.midnight, keep);
}

std::vector<outage::Look> looked_at(const chance::World& world, const chance::Lived& lived,
                                    const outage::PackKinds& kinds, Duration from,
                                    std::span<const Duration> at) {
    const Parts parts = parts_of(world, lived, kinds, from);
    return outage::look(parts.unit, parts.from_start ? lived.steps : parts.steps,
                        parts.from_start ? lived.sun : parts.sun, parts.midnight, at);
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
