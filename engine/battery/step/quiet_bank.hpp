// A quiet step of a bank of packs that differ: how they meet the bus, the bus, where the currents
// lead, and what is met on the way. Once for who takes the packs of one bank abreast
// (calm_lanes.hpp) and for who takes many banks abreast, one kind of pack after another
// (abreast/bank_stride_lanes.hpp). method.md (26) to (36)
//
// Bank is how either sees it:
//   Each, EachMask     what holds of the packs that it takes at once
//   Whole, WholeMask   what holds of the bank, or of as many banks as are abreast
//   Of                 what keeps the figures of packs, by the names of Calm::Block
//   Sum                adds up Each to Whole
//   for_each           calls with those packs, one after another; of a pack, pack[&Of::count] is
//                      such a figure, pack.face and pack.in_step what the step makes of it
//   each               a Whole as an Each
//   any, largest       over the packs of an Each
//   resists, two_wells, many_efficiencies, bends   some pack has it; constants where that pays
#pragma once

#include <limits>

#include "battery/step/in_bank.hpp"

namespace battery::step {

namespace quiet_bank_detail {

inline constexpr int rounds = 8;  // guesses at who gives and who takes

template <class Real>
[[nodiscard, gnu::always_inline]] inline Volts<Real> endless() {
    return {all<Real>(std::numeric_limits<double>::infinity())};
}

template <class Bank, class Pack>
[[nodiscard, gnu::always_inline]] inline Standing<typename Bank::Each> from_of(const Pack& pack) {
    using Of = typename Bank::Of;
    return {{pack[&Of::removed]}, {pack[&Of::head]}, pack[&Of::available], pack[&Of::below]};
}
template <class Bank, class Pack>
[[nodiscard, gnu::always_inline]] inline Constants<typename Bank::Each> constants_of(
    const Pack& pack) {
    using Of = typename Bank::Of;
    return {{pack[&Of::per_total]},
            pack[&Of::bound],
            pack[&Of::width],
            pack[&Of::head_gain],
            {pack[&Of::rate]}};
}
// What charging adds to the resistance of one pack, up to the knee. (60)
template <class Bank, class Pack>
[[nodiscard, gnu::always_inline]] inline Added<typename Bank::Each> added_of(
    const Pack& pack, Coulombs<typename Bank::Each> removed) {
    using Of = typename Bank::Of;
    using Each = typename Bank::Each;
    return step::added_at<Each>(removed, Resists<Each>{{pack[&Of::charging_empty]},
                                                       pack[&Of::charging_rise],
                                                       {pack[&Of::per_rated]},
                                                       {},
                                                       {},
                                                       {pack[&Of::inner]}});
}

}  // namespace quiet_bank_detail

// Mean rested voltage of the time without current, its fall for each ampere, and the most that the
// wells take. (12), (33)
template <Kind kind, class Bank>
[[gnu::always_inline]] inline void predict(Bank& bank, In<Seconds> auto time) {
    using namespace quiet_bank_detail;
    using Each = typename Bank::Each;
    using Of = typename Bank::Of;
    typename Bank::EachMask nearly{};
    bank.for_each([&](auto& pack) __attribute__((always_inline)) {
        const auto& decayed = pack.decayed();
        const auto from = from_of<Bank>(pack);
        pack.in_step.mean =
            mean_of<kind, Each>({{pack[&Of::at_zero]}, {pack[&Of::slope]}}, from,
                                constants_of<Bank>(pack), decayed.once,
                                fill_per_ampere(time, pack[&Of::bound_gain], decayed.twice,
                                                PerCoulomb<Each>{pack[&Of::per_total]}));
        const Ohms<Each> resistance{pack[&Of::resistance]};
        Ohms<Each> taking = resistance;
        if (bank.resists()) {
            pack.in_step.added = added_of<Bank>(pack, from.removed);
            taking = taking + pack.in_step.added.up_to_knee;
        }
        pack.in_step.lag = Volts<Each>{};
        pack.face.meets = meets_bus<Each>(pack.in_step.mean, resistance, taking, pack[&Of::gives],
                                          pack[&Of::takes], pack[&Of::coulombic]);
        pack.face.most_in = {endless<Each>().value};
        nearly |= from.available > all<Each>(nearly_full);
    });
    const auto filling = bank.any(nearly);
    if (!any_of(filling)) return;
    bank.for_each([&](auto& pack) __attribute__((always_inline)) {
        const auto& decayed = pack.decayed();
        const auto most = most_into<Each>(pack[&Of::count], from_of<Bank>(pack), pack[&Of::bound],
                                          pack[&Of::bound_gain], pack[&Of::coulombic], time,
                                          decayed.left, decayed.once);
        pack.face.most_in = bank.where(filling, most, pack.face.most_in);
    });
}

// What the bus is where guesses at who gives and who takes hold out.
//   disturbed   they do not, or the power cannot be had
template <class Bank>
struct Settled {
    BusPoint<typename Bank::Whole> bus{};
    typename Bank::WholeMask disturbed{};
};

// Where the bus may stand at most, for what is offered. (35)
template <class Bank>
[[nodiscard, gnu::always_inline]] inline auto highest_node(
    Bank& bank, const Watts<typename Bank::Whole>& power) {
    using namespace quiet_bank_detail;
    using Each = typename Bank::Each;
    using Of = typename Bank::Of;
    Volts<Each> lowest = endless<Each>();
    bank.for_each([&](auto& pack) __attribute__((always_inline)) {
        lowest = smaller(
            lowest, highest_node_of<Each>(pack.face.meets, pack.face.most_in, pack[&Of::takes],
                                          pack[&Of::count], {pack[&Of::floor]}, endless<Each>()));
    });
    return select(power < nothing_of(power), -bank.largest(-lowest),
                  endless<typename Bank::Whole>());
}

// Begins with who gave and took before. (28), (35)
//   any_offered   some power is negative
template <class Bank>
[[nodiscard, gnu::always_inline]] inline Settled<Bank> settle(
    Bank& bank, const Watts<typename Bank::Whole>& power, bool any_offered) {
    using Each = typename Bank::Each;
    using Whole = typename Bank::Whole;
    auto highest = quiet_bank_detail::endless<Whole>();
    if (any_offered) highest = highest_node(bank, power);
    Settled<Bank> found;
    typename Bank::WholeMask unsettled{};
    for (int round = 0; round < quiet_bank_detail::rounds; ++round) {
        typename Bank::Sum conducts;
        typename Bank::Sum offers;
        bank.for_each([&](auto& pack) __attribute__((always_inline)) {
            const auto of = offers_of<Each>(pack.face.meets, pack.face.most_in, pack.face.way);
            conducts.add(of.conducts.value);
            offers.add(of.offers.value);
        });
        found.bus = bus_of<Whole>(power, {conducts.total()}, {offers.total()}, highest,
                                  bank.absorption(), bank.shared(), any_offered);
        found.disturbed = found.disturbed | !found.bus.possible;
        if constexpr (one<Whole>)
            if (found.disturbed) return found;
        typename Bank::EachMask changed{};
        const Volts<Each> node{bank.each(found.bus.node.value)};
        bank.for_each([&](auto& pack) __attribute__((always_inline)) {
            auto& before = pack.face.way;
            const auto way = way_at<Each>(node, pack.face.meets, pack.face.most_in, before);
            changed |= (way.taking ^ before.taking) | (way.held ^ before.held);
            before = way;
        });
        unsettled = bank.any(changed);
        if (!any_of(unsettled & !found.disturbed)) break;
    }
    found.disturbed = found.disturbed | unsettled;
    return found;
}

// Of one pack of each, positive out of it.
template <class Bank, class Pack>
[[nodiscard, gnu::always_inline]] inline auto current_of_one(
    const Pack& pack, const Volts<typename Bank::Each>& node) {
    return current_on_bus<typename Bank::Each>(node, pack.face.meets, pack.face.most_in,
                                               pack.face.way, pack[&Bank::Of::per_count]);
}

// Whether somebody takes more than its knee, or where charging has a curve of its own: either is
// left to bank.cpp.
template <class Bank>
[[nodiscard, gnu::always_inline]] inline typename Bank::WholeMask bends(
    Bank& bank, const Volts<typename Bank::Whole>& at) {
    using Each = typename Bank::Each;
    if (!bank.bends()) return typename Bank::WholeMask{};
    typename Bank::EachMask bends{};
    const Volts<Each> node{bank.each(at.value)};
    bank.for_each([&](auto& pack) __attribute__((always_inline)) {
        auto otherwise = pack.stands_above();
        if (bank.resists())
            otherwise |= beyond_knee<Each>(node, pack.face.meets, pack.face.most_in,
                                           {pack[&Bank::Of::knee]});
        bends |= pack.face.way.taking & otherwise;
    });
    return bank.any(bends);
}

// Raises who takes charge by what it meets in the mean of the step more than at its start; whether
// there is any. (63a)
template <class Bank>
[[nodiscard, gnu::always_inline]] inline bool lag_behind(Bank& bank,
                                                         const Volts<typename Bank::Whole>& at,
                                                         In<Seconds> auto time) {
    using Each = typename Bank::Each;
    using Of = typename Bank::Of;
    typename Bank::EachMask taking{};
    bank.for_each([&](auto& pack)
                      __attribute__((always_inline)) { taking |= pack.face.way.taking; });
    if (!any_of(bank.any(taking))) return false;
    const Volts<Each> node{bank.each(at.value)};
    bank.for_each([&](auto& pack) __attribute__((always_inline)) {
        const auto& way = pack.face.way;
        const Amperes<Each> current = current_of_one<Bank>(pack, node);
        pack.in_step.lag =
            lag_of<Each>(way.taking, current, pack[&Of::coulombic] * current,
                         pack.in_step.added.slope, PerCoulomb<Each>{pack[&Of::per_rated]}, time);
        pack.in_step.lagged = way.taking;
        pack.face.meets.rested = pack.in_step.mean.at_rest + pack.in_step.lag;
    });
    return true;
}

// The bus in the mean of a step; where packs take charge, once more with what they meet in the mean
// of it.
template <class Bank>
[[nodiscard, gnu::always_inline]] inline Settled<Bank> settle_mean(
    Bank& bank, const Watts<typename Bank::Whole>& power, bool any_offered, In<Seconds> auto time) {
    auto found = settle(bank, power, any_offered);
    found.disturbed = found.disturbed | bends(bank, found.bus.node);
    if constexpr (one<typename Bank::Whole>)
        if (found.disturbed) return found;
    if (!bank.resists()) return found;
    if (!lag_behind(bank, found.bus.node, time)) return found;
    const auto again = settle(bank, power, any_offered);
    typename Bank::EachMask turned{};
    bank.for_each([&](auto& pack) __attribute__((always_inline)) {
        turned |= pack.in_step.lagged ^ pack.face.way.taking;
    });
    found.bus = again.bus;
    found.disturbed = found.disturbed | again.disturbed | bends(bank, again.bus.node);
    found.disturbed = found.disturbed | bank.any(turned);
    return found;
}

// Where the currents lead; what is met on the way disturbs.
//   moved   the most of a voltage, as the length of a step counts it
template <class Bank>
struct Followed {
    Volts<typename Bank::Whole> moved{};
    typename Bank::WholeMask disturbed{};
};

// One pack of each.
//   gives   whether it meets something on its way
template <Kind kind, class Bank, class Pack>
[[nodiscard, gnu::always_inline]] inline typename Bank::EachMask follow_one(
    const Bank& bank, Pack& pack, const Volts<typename Bank::Each>& node, In<Seconds> auto time,
    Moves<typename Bank::Each>& moves) {
    using Each = typename Bank::Each;
    using Of = typename Bank::Of;
    const auto& way = pack.face.way;
    const auto& decayed = pack.decayed();
    const auto from = quiet_bank_detail::from_of<Bank>(pack);
    const auto constants = quiet_bank_detail::constants_of<Bank>(pack);
    const auto current = bank.still() ? Amperes<Each>{} : current_of_one<Bank>(pack, node);
    const Amperes<Each> into = select(way.taking, pack[&Of::coulombic] * current, current);
    const auto to =
        stand_after<kind, Each>(from, into, constants, time, decayed.left, decayed.once);
    pack.in_step.current = current;
    pack.in_step.into = into;
    pack.in_step.to = to;
    const Ends<Each> ends{pack[&Of::low], pack[&Of::high], pack[&Of::bound_low],
                          pack[&Of::bound_high]};
    typename Bank::EachMask met = leaves_piece<Each>(way.taking, to, ends);
    if (bank.many_efficiencies())
        met |= (to.removed.value < pack[&Of::least_removed]) |
               (to.removed.value > pack[&Of::most_removed]);
    if (bank.two_wells())
        met |= leaves_beneath<Each>(from, to, into, constants, ends,
                                    Seconds<Each>{bank.each(time.value)});
    const Each filled = to.available - from.available;
    const Volts<Each> parted{pack[&Of::counted_slope] * filled};
    const Volts<Each> absent = pack.absent();
    widen<Each>(moves, absent + parted, absent - parted, {pack[&Of::slope]}, filled);
    return met;
}

// Of a charging voltage, because the charge changes, or would at the current of the start. (63)
template <class Bank, class Pack>
[[nodiscard, gnu::always_inline]] inline auto drift_of(const Pack& pack) {
    using Each = typename Bank::Each;
    const auto later = quiet_bank_detail::added_of<Bank>(pack, pack.in_step.to.removed);
    const Volts<Each> drift = charging_drift(pack.in_step.added.up_to_knee, later.up_to_knee,
                                             size_of(pack.in_step.current));
    return larger(select(pack.face.way.taking, drift, nothing_of(drift)), 2.0 * pack.in_step.lag);
}

//   also   is called for each pack; whether it meets something else
template <Kind kind, class Bank>
[[nodiscard, gnu::always_inline]] inline Followed<Bank> follow(
    Bank& bank, const BusPoint<typename Bank::Whole>& bus, const Watts<typename Bank::Whole>& power,
    In<Seconds> auto time, double tolerance, const auto& also) {
    using Each = typename Bank::Each;
    typename Bank::EachMask met{};
    const Volts<Each> least = -quiet_bank_detail::endless<Each>();
    const Volts<Each> node{bank.each(bus.node.value)};
    Moves<Each> moves{least, least, {}, Each{}};
    Volts<Each> drifts{Each{}};
    bank.for_each([&](auto& pack) __attribute__((always_inline)) {
        met |= follow_one<kind, Bank>(bank, pack, node, time, moves);
        met |= also(pack);
        if (bank.resists()) drifts = larger(drifts, drift_of<Bank>(pack));
    });
    Followed<Bank> found;
    found.disturbed = bank.any(met);
    found.moved =
        moved_by<typename Bank::Whole>({bank.largest(moves.rises), bank.largest(moves.falls),
                                        bank.largest(moves.changes), bank.largest(moves.fills)},
                                       bus, power, tolerance, bank.fill_tolerance());
    if (bank.resists())
        found.moved =
            larger(found.moved, bank.largest(drifts) * (tolerance / bank.drift_tolerance()));
    return found;
}

}  // namespace battery::step
