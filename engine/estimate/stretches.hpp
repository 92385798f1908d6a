// A part of an outage, from one change of the packs to the next, by the clock.
#pragma once

#include <algorithm>
#include <optional>
#include <span>
#include <vector>

#include "chance/world.hpp"
#include "demand/demand.hpp"
#include "outage/banks.hpp"
#include "outage/clock.hpp"
#include "outage/course.hpp"
#include "units/quantities.hpp"

namespace estimate {

inline constexpr units::Duration as_good_as_at_once = 1e-3 * units::second;

// Steps from a moment on, at which they begin anew.
template <class Step>
[[nodiscard]] std::vector<Step> from_then_on(const std::vector<Step>& steps, units::Duration at) {
    std::vector<Step> made;
    for (const Step& step : steps) {
        if (!made.empty() && step.from <= at) made.clear();
        made.push_back(step);
        made.back().from = std::max(units::Duration{}, step.from - at);
    }
    return made;
}

// Packs of a kind that stand at this charge, rested; as they are where none is given.
[[nodiscard]] outage::PackKind with_charge(outage::PackKind kind,
                                           std::optional<units::StateOfCharge> charge);

// These packs from a moment of the outage on, for a length.
//   looked   times after that moment at which the trace has a point
[[nodiscard]] outage::Course run_stretch(const chance::World& world, const chance::Lived& lived,
                                         const outage::PackKinds& kinds, units::Duration from,
                                         units::Duration length,
                                         std::span<const units::Duration> looked,
                                         outage::Keep keep);

// What panels gave between two moments of a course with its trace.
[[nodiscard]] units::Energy taken_between(const outage::Course& course, units::Duration from,
                                          units::Duration until);

// The point of the trace that holds at a moment, the later of two at one instant.
[[nodiscard]] const outage::TracePoint& point_at(const outage::Course& course, units::Duration at);

// The ways of all packs side by side to the bus; of it inside the packs.
struct Ways {
    units::Resistance all{};
    units::Resistance inside{};
};
[[nodiscard]] Ways ways_of(const outage::PackKinds& kinds);

}  // namespace estimate
