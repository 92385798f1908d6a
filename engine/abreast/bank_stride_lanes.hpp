// The stride of banks at one width of the processor. Included once a width, each in a source file
// compiled for it. The rules are those of battery::Calm, step/in_bank.hpp, so the same bits.
#pragma once

#include <array>
#include <limits>

#include "abreast/bank_stride.hpp"
#include "abreast/stride_lanes.hpp"
#include "battery/step/in_bank.hpp"

namespace abreast::lanes_detail {

// Sums over the kinds as the bank sums its packs.
template <class Real, int fixed>
[[gnu::always_inline]] inline Real sum_of(const std::array<Real, most_kinds>& x) {
    if constexpr (fixed == 2) return (x[0] + x[1]) + Real{};
    return (x[0] + x[1]) + (x[2] + x[3]);
}

// What charging adds to the resistance of one pack, up to the knee. (60)
template <class Real>
[[gnu::always_inline]] inline step::Ohms<Real> added_of(const Abreast<Real>& at,
                                                        const KindLanes& pack,
                                                        const step::Coulombs<Real>& removed) {
    return step::added_at<Real>(removed,
                                step::Resists<Real>{{at.number(pack.charging_empty.data())},
                                                    at.number(pack.charging_rise.data()),
                                                    {at.number(pack.per_rated.data())},
                                                    {},
                                                    {},
                                                    {at.number(pack.inner.data())}})
        .up_to_knee;
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
    const Seconds<Real> time{step::all<Real>(stretch.time)};
    const Real endless = step::all<Real>(never);
    const Watts<Real> power{at.number(lanes.taken.data()) -
                            (at.number(lanes.sun.data()) + at.number(lanes.charger.data()))};
    const Ohms<Real> shared{};  // the packs meet at the bus
    const auto constants = [&](const KindLanes& pack) {
        return Constants<Real>{at.template in<PerCoulomb>(pack.per_total.data()),
                               at.number(pack.bound.data()), at.number(pack.width.data()),
                               at.number(pack.head_gain.data()),
                               at.template in<PerSecond>(pack.rate.data())};
    };
    const auto here = [&](const KindLanes& pack) {
        return Standing<Real>{at.template in<Coulombs>(pack.removed.data()),
                              at.template in<Coulombs>(pack.head.data()),
                              at.number(pack.available.data()), at.number(pack.below.data())};
    };

    // Mean rested voltage of the time without current, and how a current meets it.
    std::array<Meets<Real>, most_kinds> meets{};
    std::array<Amperes<Real>, most_kinds> most_in{};
    std::array<Ohms<Real>, most_kinds> added{};
    std::array<Decays<Real>, most_kinds> over_time;
    Mask nearly{};
    for (std::size_t k = 0; k < kinds; ++k) {
        const KindLanes& pack = lanes.of[k];
        auto& decayed = over_time[k];
        decayed = stretch.alike[k] ? step::alike<Real>(stretch.decayed[k])
                                   : decays<Real>(at.number(pack.rate.data()) * stretch.time);
        const auto mean = mean_of<kind, Real>(
            {at.template in<Volts>(pack.at_zero.data()), at.template in<Volts>(pack.slope.data())},
            here(pack), constants(pack), decayed.once,
            fill_per_ampere(time, at.number(pack.bound_gain.data()), decayed.twice,
                            at.template in<PerCoulomb>(pack.per_total.data())));
        const auto resistance = at.template in<Ohms>(pack.resistance.data());
        Ohms<Real> taking = resistance;
        if constexpr (all_rules) {
            added[k] = added_of(at, pack, at.template in<Coulombs>(pack.removed.data()));
            taking = taking + added[k];
        }
        meets[k] = meets_bus<Real>(mean, resistance, taking, at.number(pack.gives.data()),
                                   at.number(pack.takes.data()), at.number(pack.coulombic.data()));
        most_in[k] = {endless};
        nearly |= at.number(pack.available.data()) > step::all<Real>(nearly_full);
    }
    if (any_of(nearly))
        for (std::size_t k = 0; k < kinds; ++k) {
            const KindLanes& pack = lanes.of[k];
            const auto& decayed = over_time[k];
            const auto most =
                most_into<Real>(at.number(pack.count.data()), here(pack),
                                at.number(pack.bound.data()), at.number(pack.bound_gain.data()),
                                at.number(pack.coulombic.data()), time, decayed.left, decayed.once);
            most_in[k] = select(nearly, most, Amperes<Real>{endless});
        }

    // The bus, by guesses at who gives and who takes.
    const auto offered_any = power < Watts<Real>{};
    const Watts<Real> asked =
        select(offered_any & ~(at.number(lanes.any_takes.data()) > none), Watts<Real>{}, power);
    Volts<Real> highest_node{endless};
    const bool any_offered = any_of(offered_any);
    if (any_offered)
        for (std::size_t k = 0; k < kinds; ++k) {
            const KindLanes& pack = lanes.of[k];
            const auto node = highest_node_of<Real>(
                meets[k], most_in[k], at.number(pack.takes.data()), at.number(pack.count.data()),
                at.template in<Amperes>(pack.floor.data()), {endless});
            highest_node =
                select(asked < Watts<Real>{}, smaller(highest_node, node), Volts<Real>{endless});
        }
    std::array<Way<Mask>, most_kinds> ways{};
    for (std::size_t k = 0; k < kinds; ++k)
        ways[k] = {at.number(lanes.of[k].taking.data()) > none,
                   at.number(lanes.of[k].held.data()) > none};
    BusPoint<Real> bus{};
    Mask disturbed{};
    Mask unsettled{};
    for (int round = 0; round < rounds; ++round) {
        OfKinds conducts{};
        OfKinds offers{};
        for (std::size_t k = 0; k < kinds; ++k) {
            const auto of = offers_of<Real>(meets[k], most_in[k], ways[k]);
            conducts[k] = of.conducts.value;
            offers[k] = of.offers.value;
        }
        bus = bus_of<Real>(asked, {sum_of<Real, fixed>(conducts)}, {sum_of<Real, fixed>(offers)},
                           highest_node, at.template in<Volts>(lanes.absorption.data()), shared,
                           any_offered);
        disturbed |= ~bus.possible;
        unsettled = Mask{};
        for (std::size_t k = 0; k < kinds; ++k) {
            const auto way = way_at<Real>(bus.node, meets[k], most_in[k], ways[k]);
            unsettled |= (way.taking ^ ways[k].taking) | (way.held ^ ways[k].held);
            ways[k] = way;
        }
        if (!any_of(unsettled & ~disturbed)) break;
    }
    disturbed |= unsettled;

    // Where the currents lead.
    std::array<Standing<Real>, most_kinds> then{};
    Moves<Real> moves{{-endless}, {-endless}, {none}, none};
    Volts<Real> drifts{};
    Volts<Real> lowest{endless};
    Volts<Real> highest{-endless};
    OfKinds out{};
    for (std::size_t k = 0; k < kinds; ++k) {
        const KindLanes& pack = lanes.of[k];
        const auto slope = at.template in<Volts>(pack.slope.data());
        const Amperes<Real> current = current_on_bus<Real>(bus.node, meets[k], most_in[k], ways[k],
                                                           at.number(pack.per_count.data()));
        const Amperes<Real> into =
            select(ways[k].taking, at.number(pack.coulombic.data()) * current, current);
        const Standing<Real> from = here(pack);
        then[k] = stand_after<kind, Real>(from, into, constants(pack), time, over_time[k].left,
                                          over_time[k].once);
        const Standing<Real>& to = then[k];
        const Ends<Real> ends{at.number(pack.low.data()), at.number(pack.high.data()),
                              at.number(pack.bound_low.data()), at.number(pack.bound_high.data())};
        if constexpr (all_rules)
            disturbed |=
                ways[k].taking & beyond_knee<Real>(bus.node, meets[k], most_in[k],
                                                   at.template in<Amperes>(pack.knee.data()));
        disturbed |= ways[k].taking & (at.number(pack.stands_above.data()) > none);
        disturbed |= leaves_piece<Real>(ways[k].taking, to, ends);
        disturbed |= (to.removed < at.template in<Coulombs>(pack.least_removed.data())) |
                     (to.removed > at.template in<Coulombs>(pack.most_removed.data()));
        const Real filled = to.available - from.available;
        const Volts<Real> parted = at.template in<Volts>(pack.counted_slope.data()) * filled;
        widen<Real>(moves, parted, -parted, slope, filled);
        out[k] = at.number(pack.count.data()) * to.removed.value;
        if constexpr (all_rules) {
            disturbed |= leaves_beneath<Real>(from, to, into, constants(pack), ends, time);
            const Volts<Real> drift =
                charging_drift(added[k], added_of(at, pack, to.removed), size_of(current));
            drifts = larger(drifts, select(ways[k].taking, drift, Volts<Real>{}));
        }
        const auto at_zero = at.template in<Volts>(pack.at_zero.data());
        const Volts<Real> before = voltage_on(at_zero, slope, from.available);
        const Volts<Real> after = voltage_on(at_zero, slope, to.available);
        lowest = smaller(lowest, smaller(before, after));
        highest = larger(highest, larger(before, after));
        disturbed |= smaller(before, after) <= at.template in<Volts>(pack.empty.data());
    }

    // The tolerance.
    Volts<Real> moved = moved_by<Real>(moves, bus, power, lanes.tolerance, lanes.fill_tolerance);
    if constexpr (all_rules) {
        const Volts<Real> drifted = drifts * (lanes.tolerance / lanes.drift_tolerance);
        moved = select(moved < drifted, drifted, moved);
    }
    disturbed |= moved > Volts<Real>{step::all<Real>(lanes.tolerance)};

    // Far from every threshold, at either end. method.md (4)
    const SquareVolts<Real> drop =
        larger(power, Watts<Real>{}) * at.template in<Ohms>(lanes.ohms.data());
    const auto cut_off =
        at.template in<Volts>(stretch.through_inverter ? lanes.cut_off_with_inverter.data()
                                                       : lanes.cut_off_direct.data());
    const Volts<Real> limit = highest - at.template in<Volts>(lanes.limit_drop.data());
    const auto above = [&](const Volts<Real>& voltage) {
        return ~(voltage > Volts<Real>{}) |
               ((lowest > voltage) & ((lowest - voltage) * voltage > drop));
    };
    disturbed |= ~above(cut_off) | ~above(limit) | ~(lowest * lowest > 4.0 * drop);
    const Real removed = at.number(lanes.removed.data());
    const Real removed_then = sum_of<Real, fixed>(out);
    const Real usable = at.number(lanes.removed_above.data());
    const Real full = at.number(lanes.filled_to.data());
    disturbed |= (power > Watts<Real>{}) & ((removed >= usable) | (removed_then >= usable));
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
        at.put(pack.taking.data(), disturbed ? taking_before : ways[k].taking ? one : none);
        at.put(pack.held.data(), disturbed ? held_before : ways[k].held ? one : none);
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
