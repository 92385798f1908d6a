#include "report/sampling.hpp"

#include <algorithm>
#include <cassert>

namespace report {

namespace {

using outage::TracePoint;
using units::Duration;

template <class Quantity>
Quantity between(Quantity before, Quantity after, double share) {
    return before + share * (after - before);
}

TracePoint between(const TracePoint& before, const TracePoint& after, Duration at) {
    const double share = (at - before.at) / (after.at - before.at);
    return {
        .at = at,
        .stored = between(before.stored, after.stored, share),
        .charge = units::StateOfCharge(between(before.charge.value(), after.charge.value(), share)),
        .voltage = between(before.voltage, after.voltage, share),
        .current = between(before.current, after.current, share),
        .wanted = between(before.wanted, after.wanted, share),
        .served = between(before.served, after.served, share),
        .sun_offered = between(before.sun_offered, after.sun_offered, share),
        .sun_taken = between(before.sun_taken, after.sun_taken, share)};
}

// The state just before a moment, so that a jump at the end of a span stays outside of it.
TracePoint state_before(const Trace& trace, Duration at) {
    const auto after = std::ranges::lower_bound(trace, at, {}, &TracePoint::at);
    if (after == trace.begin()) {
        return trace.front();
    }
    if (after == trace.end()) {
        return trace.back();
    }
    return between(*std::prev(after), *after, at);
}

}  // namespace

TracePoint state_at(const Trace& trace, Duration at) {
    assert(!trace.empty());
    const auto after = std::ranges::upper_bound(trace, at, {}, &TracePoint::at);
    if (after == trace.begin()) {
        return trace.front();
    }
    if (after == trace.end()) {
        return trace.back();
    }
    return between(*std::prev(after), *after, at);
}

units::Power mean_power(const Trace& trace, units::Power TracePoint::*power, Duration from,
                        Duration to) {
    assert(!trace.empty() && from < to);
    units::Energy energy{};
    TracePoint last = state_at(trace, from);
    const auto add_up_to = [&](const TracePoint& next) {
        energy += 0.5 * (last.*power + next.*power) * (next.at - last.at);
        last = next;
    };
    last.at = from;
    const auto inside = std::ranges::upper_bound(trace, from, {}, &TracePoint::at);
    for (auto point = inside; point != trace.end() && point->at < to; ++point) {
        add_up_to(*point);
    }
    TracePoint end = state_before(trace, to);
    end.at = to;
    add_up_to(end);
    return energy / (to - from);
}

}  // namespace report
