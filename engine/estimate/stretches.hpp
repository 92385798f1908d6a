// A part of an outage, from one change of the packs to the next, by the clock.
#pragma once

#include <algorithm>
#include <optional>
#include <span>
#include <vector>

#include "chance/world.hpp"
#include "demand/demand.hpp"
#include "outage/clock/banks.hpp"
#include "outage/clock/clock.hpp"
#include "outage/clock/looks.hpp"
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
[[nodiscard]] outage::Course run_stretch(const chance::World& world, const chance::Lived& lived,
                                         const outage::PackKinds& kinds, units::Duration from,
                                         units::Duration length, outage::Keep keep);

// The same, looked at.
//   at      after that moment, in rising order; it goes on to the last of them
//   gives   one for each
[[nodiscard]] std::vector<outage::Look> looked_at(const chance::World& world,
                                                  const chance::Lived& lived,
                                                  const outage::PackKinds& kinds,
                                                  units::Duration from,
                                                  std::span<const units::Duration> at);

// The ways of all packs side by side to the bus; of it inside the packs.
struct Ways {
    units::Resistance all{};
    units::Resistance inside{};
};
[[nodiscard]] Ways ways_of(const outage::PackKinds& kinds);

}  // namespace estimate
