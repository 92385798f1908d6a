#include "battery/cell/two_well.hpp"

#include <algorithm>
#include <cassert>
#include <cmath>

#include <boost/math/tools/toms748_solve.hpp>

namespace battery {

using namespace units;

namespace {

// How far the available well stands below full, in charge of the whole pack's width: 0 full.
Charge shortfall(const Kinetics& kinetics, const Wells& wells) {
    return wells.removed + kinetics.available.complement().value() * wells.head_difference;
}

// The shortfall after a time is this intercept plus current times this duration: method.md (4).
Duration shortfall_per_current(const Kinetics& kinetics, Duration time) {
    const double bound_over_available =
        kinetics.available.complement().value() / kinetics.available.value();
    return time * (1.0 + bound_over_available * decay(kinetics.rate * time).once);
}

Charge shortfall_at_rest(const Kinetics& kinetics, const Wells& wells, Duration time) {
    return wells.removed + kinetics.available.complement().value() * wells.head_difference *
                               decay(kinetics.rate * time).left;
}

// The instant at which the shortfall reaches a target, from the side on which it starts.
// It does so once: between its start and there the shortfall has one curvature; method.md (6).
Duration instant_of(const Kinetics& kinetics, const Wells& wells, Current current, Charge target) {
    const auto beyond = [&](double seconds) {
        const Duration time = seconds * second;
        const Charge there = shortfall_at_rest(kinetics, wells, time) +
                             current * shortfall_per_current(kinetics, time);
        return (there - target) / coulomb;
    };
    const double at_start = beyond(0.0);
    const Charge farthest = abs(target - wells.removed) +
                            kinetics.available.complement().value() * abs(wells.head_difference);
    // a little more than enough, so that rounding cannot hide the sign change
    const double latest = 1.000001 * (farthest / abs(current)).value() + 1e-9;
    const double at_latest = beyond(latest);
    if (at_start == 0.0 || (at_start > 0.0) == (at_latest > 0.0)) return {};
    std::uintmax_t steps = 200;
    const auto bracket =
        boost::math::tools::toms748_solve(beyond, 0.0, latest, at_start, at_latest,
                                          boost::math::tools::eps_tolerance<double>(52), steps);
    return 0.5 * (bracket.first + bracket.second) * second;
}

}  // namespace

Wells wells_holding(const Kinetics& kinetics, Charge available, Charge bound) {
    const double width = kinetics.available.value();
    if (width >= 1.0) return {.removed = kinetics.total - available, .head_difference = {}};
    return {.removed = kinetics.total - available - bound,
            .head_difference = bound / (1.0 - width) - available / width};
}

std::optional<Duration> time_to_empty(const Kinetics& kinetics, const Wells& wells, Current current,
                                      Share reachable) {
    if (!(current > Current{})) return std::nullopt;
    const Charge target = reachable.value() * kinetics.total;
    if (shortfall(kinetics, wells) >= target) return Duration{};
    return instant_of(kinetics, wells, current, target);
}

std::optional<Duration> time_to_full(const Kinetics& kinetics, const Wells& wells,
                                     Current current) {
    if (!(current < Current{})) return std::nullopt;
    if (shortfall(kinetics, wells) <= Charge{}) return Duration{};
    return instant_of(kinetics, wells, current, Charge{});
}

Current largest_discharge(const Kinetics& kinetics, const Wells& wells, Duration time,
                          Share reachable) {
    assert(time > Duration{});
    const Charge room =
        reachable.value() * kinetics.total - shortfall_at_rest(kinetics, wells, time);
    return std::max(Current{}, Current(room / shortfall_per_current(kinetics, time)));
}

Current largest_charge(const Kinetics& kinetics, const Wells& wells, Duration time) {
    assert(time > Duration{});
    const Charge room = shortfall_at_rest(kinetics, wells, time);
    return std::max(Current{}, Current(room / shortfall_per_current(kinetics, time)));
}

Charge capacity_over(const Kinetics& kinetics, Duration time) {
    assert(time > Duration{});
    return kinetics.total * time / shortfall_per_current(kinetics, time);
}

Taper taper(const Kinetics& kinetics, const Wells& wells, Duration time) {
    const double width = kinetics.available.value();
    const Frequency rate = kinetics.rate * width;  // method.md (9)
    const Charge head = wells.head_difference * decay(rate * time).left;
    const Charge removed = -(1.0 - width) * head;
    return {.wells = {.removed = removed, .head_difference = head},
            .current = rate * (1.0 - width) * head,
            .accepted = wells.removed - removed};
}

}  // namespace battery
