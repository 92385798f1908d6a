// The stride of banks at one width of the processor. Included once a width, each in a source file
// compiled for it. Operations and their order are those of battery::Calm, so the same bits.
#pragma once

#include <array>
#include <limits>

#include "abreast/bank_stride.hpp"
#include "abreast/stride_lanes.hpp"

#include "battery/step/quiet.hpp"

namespace abreast::lanes_detail {

template <class Real>
using MaskOf = decltype(Real{} < Real{});

template <class Real>
[[gnu::always_inline]] inline Real larger_of(const Real& a, const Real& b) {
    return a > b ? a : b;
}
template <class Real>
[[gnu::always_inline]] inline Real smaller_of(const Real& a, const Real& b) {
    return a < b ? a : b;
}
template <class Real>
[[gnu::always_inline]] inline Real magnitude_of(const Real& a) {
    return larger_of<Real>(a, -a);
}
template <class Mask>
[[gnu::always_inline]] inline bool any_of(const Mask& mask) {
    long long any = 0;
    for (std::size_t i = 0; i < sizeof(Mask) / sizeof(long long); ++i)
        any |= mask[i];
    return any != 0;
}

// Sums over the kinds as the bank sums its packs.
template <class Real, int fixed>
[[gnu::always_inline]] inline Real sum_of(const std::array<Real, most_kinds>& x) {
    if constexpr (fixed == 2) return (x[0] + x[1]) + Real{};
    return (x[0] + x[1]) + (x[2] + x[3]);
}

// The bus, given how the packs behave. (28), (35)
template <class Real>
struct BusAbreast {
    Real node, voltage, source;
    MaskOf<Real> possible;
};

template <class Real>
[[gnu::always_inline]] inline BusAbreast<Real> bus_of(const Real& power, const Real& conductance,
                                                      const Real& offered, const Real& highest_node,
                                                      const Real& absorption, const Real& shared,
                                                      bool any_offered) {
    const Real none{};
    const Real source = offered / conductance;
    const Real resistance = 1.0 / conductance + shared;
    const Real under_root = source * source - 4.0 * resistance * power;
    const Real current = 2.0 * power / (source + step::root_of(under_root));
    const Real node = (offered - current) / conductance;
    const Real voltage = node - shared * current;
    BusAbreast<Real> bus{node, voltage, source,
                         (conductance > none) & (under_root >= none) & (source > none)};
    if (!any_offered) return bus;
    const auto free = ~(power < none) | ((voltage <= absorption) & (node <= highest_node));
    if (!any_of(~free)) return bus;
    const Real held_node = smaller_of<Real>(
        highest_node, (absorption + shared * offered) / (1.0 + shared * conductance));
    const Real held_current = offered - conductance * held_node;
    const Real held_voltage = held_node - shared * held_current;
    const auto takes = held_current < none;  // else they stand above what is offered them
    bus.node = free ? bus.node : takes ? held_node : source;
    bus.voltage = free ? bus.voltage : takes ? held_voltage : source;
    bus.source = free ? bus.source : takes ? held_voltage : source;
    return bus;
}

// What charging adds to the resistance of one pack, up to the knee. (60)
template <class Real>
[[gnu::always_inline]] inline Real added_of(const Abreast<Real>& at, const KindLanes& pack,
                                            const Real& removed) {
    return step::added_at<Real>({removed},
                                step::Resists<Real>{{at.number(pack.charging_empty.data())},
                                                    at.number(pack.charging_rise.data()),
                                                    {at.number(pack.per_rated.data())},
                                                    {},
                                                    {},
                                                    {at.number(pack.inner.data())}})
        .up_to_knee.value;
}

//   fixed   the number of kinds, or 0 where it is given
template <bool all_rules, int fixed, class Real>
[[gnu::always_inline]] inline void bank_stride_from(std::size_t lane, BankLanes& lanes,
                                                    const BankStretch& stretch) {
    using namespace step;
    using Mask = MaskOf<Real>;
    using OfKinds = std::array<Real, most_kinds>;
    constexpr Kind kind{.two_wells = all_rules};
    constexpr double never = std::numeric_limits<double>::infinity();
    constexpr int rounds = 8;
    const std::size_t kinds = fixed > 0 ? std::size_t(fixed) : lanes.kinds;
    const Abreast<Real> at{lane};
    const Real none{};
    const Real time = step::all<Real>(stretch.time);
    const Real endless = step::all<Real>(never);
    const Real power = at.number(lanes.taken.data()) -
                       (at.number(lanes.sun.data()) + at.number(lanes.charger.data()));
    const Real shared = at.number(lanes.shared.data());
    const auto constants = [&](const KindLanes& pack) {
        return Constants<Real>{{at.number(pack.per_total.data())},
                               at.number(pack.bound.data()),
                               at.number(pack.width.data()),
                               at.number(pack.head_gain.data()),
                               {at.number(pack.rate.data())}};
    };
    const auto here = [&](const KindLanes& pack) {
        return Standing<Real>{{at.number(pack.removed.data())},
                              {at.number(pack.head.data())},
                              at.number(pack.available.data()),
                              at.number(pack.below.data())};
    };

    // Mean rested voltage of the time without current, and how a current meets it. (12), (33)
    OfKinds rested{};
    OfKinds giving{};
    OfKinds receiving{};
    OfKinds in_ohms{};
    OfKinds most_in{};
    OfKinds added{};
    Mask nearly{};
    for (std::size_t k = 0; k < kinds; ++k) {
        const KindLanes& pack = lanes.of[k];
        const auto& decayed = stretch.decayed[k];
        const auto mean = mean_of<kind, Real>(
            {{at.number(pack.at_zero.data())}, {at.number(pack.slope.data())}}, here(pack),
            constants(pack), decayed.once,
            fill_per_ampere(Seconds<Real>{time}, at.number(pack.bound_gain.data()),
                            step::all<Real>(decayed.twice),
                            PerCoulomb<Real>{at.number(pack.per_total.data())}));
        const Real resistance = at.number(pack.resistance.data());
        const Real least = step::all<Real>(least_resistance);
        rested[k] = mean.at_rest.value;
        giving[k] = at.number(pack.gives.data()) /
                    larger_of<Real>(least, resistance + mean.per_ampere.value);
        Real taking = resistance;
        if constexpr (all_rules) {
            added[k] = added_of(at, pack, at.number(pack.removed.data()));
            taking = taking + added[k];
        }
        in_ohms[k] = larger_of<Real>(
            least, taking + at.number(pack.coulombic.data()) * mean.per_ampere.value);
        receiving[k] = at.number(pack.takes.data()) / in_ohms[k];
        most_in[k] = endless;
        nearly |= at.number(pack.available.data()) > step::all<Real>(nearly_full);
    }
    if (any_of(nearly))
        for (std::size_t k = 0; k < kinds; ++k) {
            const KindLanes& pack = lanes.of[k];
            const auto& decayed = stretch.decayed[k];
            const Real shortfall =
                at.number(pack.removed.data()) +
                at.number(pack.bound.data()) * at.number(pack.head.data()) * decayed.left;
            const Real each = time * (1.0 + at.number(pack.bound_gain.data()) * decayed.once) *
                              at.number(pack.coulombic.data());
            most_in[k] =
                nearly ? at.number(pack.count.data()) * larger_of<Real>(none, shortfall / each)
                       : endless;
        }

    // The bus, by guesses at who gives and who takes.
    const auto offered_any = power < none;
    const Real asked = offered_any & ~(at.number(lanes.any_takes.data()) > none) ? none : power;
    Real highest_node = endless;
    const bool any_offered = any_of(offered_any);
    if (any_offered)
        for (std::size_t k = 0; k < kinds; ++k) {
            const KindLanes& pack = lanes.of[k];
            const Real floor = at.number(pack.floor.data());
            const auto limited = (at.number(pack.takes.data()) > none) &
                                 (most_in[k] > -at.number(pack.count.data()) * floor);
            const Real node = limited ? rested[k] - floor * in_ohms[k] : endless;
            highest_node = asked < none ? smaller_of<Real>(highest_node, node) : endless;
        }
    std::array<Mask, most_kinds> taking{};
    std::array<Mask, most_kinds> held{};
    for (std::size_t k = 0; k < kinds; ++k) {
        taking[k] = at.number(lanes.of[k].taking.data()) > none;
        held[k] = at.number(lanes.of[k].held.data()) > none;
    }
    BusAbreast<Real> bus{};
    Mask disturbed{};
    Mask unsettled{};
    for (int round = 0; round < rounds; ++round) {
        OfKinds conducts{};
        OfKinds offers{};
        for (std::size_t k = 0; k < kinds; ++k) {
            conducts[k] = held[k] ? none : taking[k] ? receiving[k] : giving[k];
            offers[k] = held[k] ? -most_in[k] : conducts[k] * rested[k];
        }
        bus = bus_of<Real>(asked, sum_of<Real, fixed>(conducts), sum_of<Real, fixed>(offers),
                           highest_node, at.number(lanes.absorption.data()), shared, any_offered);
        disturbed |= ~bus.possible;
        unsettled = Mask{};
        for (std::size_t k = 0; k < kinds; ++k) {
            const Real above = bus.node - rested[k];
            const Real margin = step::all<Real>(level);
            const Mask takes = above > (taking[k] ? -margin : margin);
            const Mask holds = takes & (above * receiving[k] > most_in[k]);
            unsettled |= (takes ^ taking[k]) | (holds ^ held[k]);
            taking[k] = takes;
            held[k] = holds;
        }
        if (!any_of(unsettled & ~disturbed)) break;
    }
    disturbed |= unsettled;

    // Where the currents lead.
    std::array<Standing<Real>, most_kinds> then{};
    Real rises_most = -endless;
    Real falls_most = -endless;
    Real changes_most = none;
    Real fills_most = none;
    Real drifts = none;
    Real lowest = endless;
    Real highest = -endless;
    OfKinds out{};
    for (std::size_t k = 0; k < kinds; ++k) {
        const KindLanes& pack = lanes.of[k];
        const Real slope = at.number(pack.slope.data());
        const Real at_zero = at.number(pack.at_zero.data());
        const Real bound = at.number(pack.bound.data());
        const Real beneath = rested[k] - bus.node;
        const Real free = taking[k] ? smaller_of<Real>(none, beneath) * receiving[k]
                                    : larger_of<Real>(none, beneath) * giving[k];
        const Real current = (held[k] ? -most_in[k] : free) * at.number(pack.per_count.data());
        const Real into = taking[k] ? at.number(pack.coulombic.data()) * current : current;
        const Standing<Real> from = here(pack);
        then[k] = stand_after<kind, Real>(from, {into}, constants(pack), Seconds<Real>{time},
                                          step::all<Real>(stretch.decayed[k].left),
                                          step::all<Real>(stretch.decayed[k].once));
        const Standing<Real>& to = then[k];
        if constexpr (all_rules) {
            const auto fast = smaller_of<Real>((bus.node - rested[k]) * receiving[k], most_in[k]) >
                              at.number(pack.knee.data());
            disturbed |= taking[k] & fast;
        }
        disturbed |= taking[k] & (at.number(pack.stands_above.data()) > none);
        disturbed |= taking[k] & (to.available > step::all<Real>(1.0 + level));
        disturbed |= (to.available < at.number(pack.low.data())) |
                     (to.available > at.number(pack.high.data()));
        disturbed |= (to.removed.value < at.number(pack.least_removed.data())) |
                     (to.removed.value > at.number(pack.most_removed.data()));
        const Real filled = to.available - from.available;
        const Real parted = at.number(pack.counted_slope.data()) * filled;
        changes_most = larger_of<Real>(changes_most, magnitude_of<Real>(slope * filled));
        fills_most = larger_of<Real>(fills_most, magnitude_of<Real>(filled));
        rises_most = larger_of<Real>(rises_most, parted);
        falls_most = larger_of<Real>(falls_most, -parted);
        out[k] = at.number(pack.count.data()) * to.removed.value;
        if constexpr (all_rules) {
            const Real low = at.number(pack.bound_low.data());
            const Real high = at.number(pack.bound_high.data());
            const Real per_total = at.number(pack.per_total.data());
            const Real rate = at.number(pack.rate.data());
            disturbed |= (to.bound < low) | (to.bound > high);
            // a well may turn round on the way, but not beyond its straight piece
            const auto rise = [&](const Coulombs<Real>& head) {
                return shortfall_rise(
                           Amperes<Real>{into}, bound,
                           head_rise(Amperes<Real>{into}, at.number(pack.head_gain.data()),
                                     PerSecond<Real>{rate}, head))
                    .value;
            };
            const Real before = rise(from.head);
            const Real after = rise(to.head);
            const Real beyond =
                larger_of<Real>(magnitude_of<Real>(before), magnitude_of<Real>(after)) * per_total *
                time;
            disturbed |= (before * after < none) &
                         ((smaller_of<Real>(from.available, to.available) - beyond <
                           at.number(pack.low.data())) |
                          (larger_of<Real>(from.available, to.available) + beyond >
                           at.number(pack.high.data())));
            const Real head = from.head.value;
            const Real head_then = to.head.value;
            const Real deeper =
                larger_of<Real>(magnitude_of<Real>(head), magnitude_of<Real>(head_then)) *
                at.number(pack.width.data()) * rate * per_total * time;
            disturbed |= (head * head_then < none) &
                         ((smaller_of<Real>(from.bound, to.bound) - deeper < low) |
                          (larger_of<Real>(from.bound, to.bound) + deeper > high));
            const Real drift =
                (added_of(at, pack, to.removed.value) - added[k]) * magnitude_of<Real>(current);
            drifts = larger_of<Real>(drifts, taking[k] ? drift : none);
        }
        const Real before = at_zero + slope * from.available;
        const Real after = at_zero + slope * to.available;
        lowest = smaller_of<Real>(lowest, smaller_of<Real>(before, after));
        highest = larger_of<Real>(highest, larger_of<Real>(before, after));
        disturbed |= smaller_of<Real>(before, after) <= at.number(pack.empty.data());
    }

    // The tolerance. (20b), (36)
    const Real root = 2.0 * bus.voltage - bus.source;
    const auto amplifies = (root > none) & (bus.source > root);
    const Real amplified = amplifies ? changes_most * (bus.source / root) : changes_most;
    const Real parted = (rises_most + falls_most) / apart;
    const Real change = amplified < parted ? parted : amplified;
    const Real passes_part = power > none
                                 ? step::all<Real>(passes_discharging * lanes.fill_tolerance)
                                 : step::all<Real>(passes_charging * lanes.fill_tolerance);
    const Real may_pass = lanes.tolerance * (fills_most / passes_part);
    Real moved = may_pass < change ? may_pass : change;
    if constexpr (all_rules) {
        const Real drifted = drifts * (lanes.tolerance / lanes.drift_tolerance);
        moved = moved < drifted ? drifted : moved;
    }
    disturbed |= moved > step::all<Real>(lanes.tolerance);

    // Far from every threshold, at either end. method.md (4)
    const Real drop = larger_of<Real>(power, none) * at.number(lanes.ohms.data());
    const Real cut_off = at.number(stretch.through_inverter ? lanes.cut_off_with_inverter.data()
                                                            : lanes.cut_off_direct.data());
    const Real limit = highest - at.number(lanes.limit_drop.data());
    const auto above = [&](const Real& voltage) {
        return ~(voltage > none) | ((lowest > voltage) & ((lowest - voltage) * voltage > drop));
    };
    disturbed |= ~above(cut_off) | ~above(limit) | ~(lowest * lowest > 4.0 * drop);
    const Real removed = at.number(lanes.removed.data());
    const Real removed_then = sum_of<Real, fixed>(out);
    const Real usable = at.number(lanes.removed_above.data());
    const Real full = at.number(lanes.filled_to.data());
    disturbed |= (power > none) & ((removed >= usable) | (removed_then >= usable));
    disturbed |= (removed > full) & (removed_then <= full);

    const Real one = step::all<Real>(1.0);
    at.put(lanes.alone.data(), disturbed ? one : none);
    at.put(lanes.removed.data(), disturbed ? removed : removed_then);
    for (std::size_t k = 0; k < kinds; ++k) {
        KindLanes& pack = lanes.of[k];
        const Standing<Real> from = here(pack);
        const Real taking_before = at.number(pack.taking.data());
        const Real held_before = at.number(pack.held.data());
        at.put(pack.removed.data(), disturbed ? from.removed.value : then[k].removed.value);
        at.put(pack.head.data(), disturbed ? from.head.value : then[k].head.value);
        at.put(pack.available.data(), disturbed ? from.available : then[k].available);
        at.put(pack.below.data(), disturbed ? from.bound : then[k].bound);
        at.put(pack.taking.data(), disturbed ? taking_before : taking[k] ? one : none);
        at.put(pack.held.data(), disturbed ? held_before : held[k] ? one : none);
    }
}

template <bool all_rules, int fixed, class Real>
void bank_stride_of(BankLanes& lanes, const BankStretch& stretch, std::size_t count) {
    for (std::size_t lane = 0; lane < count; lane += step::lanes_of<Real>)
        bank_stride_from<all_rules, fixed, Real>(lane, lanes, stretch);
}

using BankStride = void(BankLanes&, const BankStretch&, std::size_t);

template <class Real>
BankStride* bank_stride_for(std::size_t kinds, bool all_rules) {
    if (kinds == 2)
        return all_rules ? bank_stride_of<true, 2, Real> : bank_stride_of<false, 2, Real>;
    return all_rules ? bank_stride_of<true, 0, Real> : bank_stride_of<false, 0, Real>;
}

extern template BankStride* bank_stride_for<step::Two>(std::size_t, bool);
extern template BankStride* bank_stride_for<step::Four>(std::size_t, bool);
extern template BankStride* bank_stride_for<step::Eight>(std::size_t, bool);

}  // namespace abreast::lanes_detail
