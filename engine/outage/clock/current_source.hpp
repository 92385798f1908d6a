// A controller that passes on the panels' current at whatever voltage the bus has: what it then
// gives as a power. method.md (16)
#pragma once

#include <cmath>
#include <cstdint>

#include <boost/math/tools/toms748_solve.hpp>

#include "outage/clock/packs.hpp"
#include "units/quantities.hpp"

namespace outage {

// The power of a source of current, such that it is the current times the voltage of the bus while
// just that power is given.
//   passes    at least zero
//   without   what the packs would have to give without it; negative is offered to them
//   voltage   of the bus, as a function of what the packs have to give; falls as that rises, by
//             less than a volt for a watt of a current of 1 A
//   guess     of the power it gives
template <class VoltageAt>
[[nodiscard]] units::Power power_passed(units::Current passes, units::Power without,
                                        units::Power guess, VoltageAt voltage) {
    using namespace units;
    if (!(passes > Current{})) return {};
    const double asked = without / watt;
    const auto off = [&](double net) { return net - asked + passes * voltage(net * watt) / watt; };
    const double close = 1e-14 * (std::abs(asked) + std::abs(guess / watt));
    // The voltage moves little with the power, so what is missed is nearly the way there.
    double net = asked - guess / watt;
    double missed = off(net);
    double slope = 1.0;
    for (int turn = 0; turn < 8 && std::abs(missed) > close; ++turn) {
        const double next = net - missed / slope;
        if (next == net) break;
        const double then = off(next);
        const double rise = (then - missed) / (next - net);
        net = next;
        missed = then;
        if (rise > 0.5 && rise < 2.0) slope = rise;
    }
    if (std::abs(missed) <= 1e2 * close) return without - net * watt;
    // A step of the voltage, where charging ends or a curve bends: between two that miss it.
    double other = net;
    double beyond = missed;
    for (double step = 2.0 * std::abs(missed); beyond * missed > 0.0 && std::isfinite(step);
         step *= 2.0) {
        other = net - std::copysign(step, missed);
        beyond = off(other);
    }
    if (beyond == 0.0) return without - other * watt;
    if (beyond * missed > 0.0) return without - net * watt;
    const bool rises = other > net;
    std::uintmax_t steps = 60;
    const auto found = boost::math::tools::toms748_solve(
        off, rises ? net : other, rises ? other : net, rises ? missed : beyond,
        rises ? beyond : missed, [&](double low, double high) { return high - low <= close; },
        steps);
    net = std::abs(off(found.first)) < std::abs(off(found.second)) ? found.first : found.second;
    return without - net * watt;
}

// The mean voltage at which a leg's charge flowed; that at its end where none did.
[[nodiscard]] inline units::Voltage mean_voltage(const Leg& leg) {
    using namespace units;
    constexpr Charge hardly_any = 1e-9 * coulomb;
    if (!(abs(leg.charge) > hardly_any)) return leg.voltage;
    return (leg.energy.delivered - leg.energy.accepted) / leg.charge;
}

// What it gives on the mean over a leg, so that its charge is that of the packs and of the loads at
// the leg's voltage.
template <class Packs>
[[nodiscard]] units::Power power_passed_over(const Packs& packs, Duty duty, units::Current passes,
                                             units::Power without, units::Power guess,
                                             units::Duration time) {
    return power_passed(passes, without, guess, [&](units::Power net) {
        return mean_voltage(packs.tried(duty, net, time));
    });
}
// At this moment.
template <class Packs>
[[nodiscard]] units::Power power_passed_now(const Packs& packs, Duty duty, units::Current passes,
                                            units::Power without, units::Power guess) {
    return power_passed(passes, without, guess,
                        [&](units::Power net) { return packs.voltage_at(duty, net); });
}

}  // namespace outage
