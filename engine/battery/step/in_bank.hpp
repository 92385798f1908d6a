// A quiet step of packs that differ, on one bus: how a kind of them meets the bus, the bus itself,
// where the currents lead and whether something was met on the way. Each over any real: a bank
// takes its packs abreast, many banks are taken one kind after another; what is summed or sought
// over all of them is in quiet_bank.hpp. method.md (26) to (36)
#pragma once

#include "battery/step/quiet.hpp"

namespace battery::step {

template <Number A, class U, class B>
[[nodiscard, gnu::always_inline]] constexpr auto operator/(const A& a, const Dimensioned<U, B>& b) {
    return dimensioned_detail::with<dimensioned_detail::Over<dimensioned_detail::None, U>>(a /
                                                                                           b.value);
}

template <class Real>
using PerOhm =
    Dimensioned<dimensioned_detail::Over<dimensioned_detail::None, units::si::resistance>, Real>;

template <class Real>
using MaskOf = decltype(Real{} < Real{});

template <class Mask>
[[nodiscard, gnu::always_inline]] inline bool any_of(const Mask& mask) {
    if constexpr (one<Mask>) {
        return mask;
    } else {
        long long any = 0;
        for (std::size_t lane = 0; lane < sizeof(Mask) / sizeof(long long); ++lane)
            any |= mask[lane];
        return any != 0;
    }
}

template <class U, class A>
[[nodiscard, gnu::always_inline]] inline Dimensioned<U, A> larger(const Dimensioned<U, A>& a,
                                                                  const Dimensioned<U, A>& b) {
    return {a.value > b.value ? a.value : b.value};
}
template <class U, class A>
[[nodiscard, gnu::always_inline]] inline Dimensioned<U, A> smaller(const Dimensioned<U, A>& a,
                                                                   const Dimensioned<U, A>& b) {
    return {a.value < b.value ? a.value : b.value};
}
template <Number A>
[[nodiscard, gnu::always_inline]] inline A larger(const A& a, const A& b) {
    return a > b ? a : b;
}
template <Number A>
[[nodiscard, gnu::always_inline]] inline A smaller(const A& a, const A& b) {
    return a < b ? a : b;
}
template <class A>
[[nodiscard, gnu::always_inline]] inline A size_of(const A& a) {
    return larger<>(a, A{-a});
}

// ---- how a kind of pack meets the bus

// Of all packs of the kind together, but in_ohms, which is of one.
template <class Real>
struct Meets {
    Volts<Real> rested;
    PerOhm<Real> giving;
    PerOhm<Real> receiving;
    Ohms<Real> in_ohms;
};

// In the mean of a step. (12), (31)
//   gives, takes   so many of the packs
//   taking         the resistance that charging meets
template <class Real>
[[nodiscard, gnu::always_inline]] inline Meets<Real> meets_bus(const Mean<Real>& mean,
                                                               Ohms<Real> resistance,
                                                               Ohms<Real> taking, const Real& gives,
                                                               const Real& takes,
                                                               const Real& coulombic) {
    const Ohms<Real> least{all<Real>(least_resistance)};
    Meets<Real> meets;
    meets.rested = mean.at_rest;
    meets.giving = gives / larger(least, resistance + mean.per_ampere);
    meets.in_ohms = larger(least, taking + coulombic * mean.per_ampere);
    meets.receiving = takes / meets.in_ohms;
    return meets;
}

// The most that they take in the time before a well is full. (33)
template <class Real>
[[nodiscard, gnu::always_inline]] inline Amperes<Real> most_into(
    const Real& count, const Standing<Real>& from, const Real& bound, const Real& bound_gain,
    const Real& coulombic, In<Seconds> auto time, Number auto left, Number auto once) {
    const Coulombs<Real> shortfall = from.removed + bound * from.head * left;
    const auto each = time * (1.0 + bound_gain * once) * coulombic;
    const auto most = shortfall / each;
    return count * larger(nothing_of(most), most);
}

// Where the bus would stand with one pack at its charge limit; without end for who takes none or
// less. (35)
template <class Real>
[[nodiscard, gnu::always_inline]] inline Volts<Real> highest_node_of(
    const Meets<Real>& meets, Amperes<Real> most_in, const Real& takes, const Real& count,
    Amperes<Real> floor, Volts<Real> endless) {
    const auto limited = (takes > Real{}) & (most_in > -count * floor);
    return select(limited, meets.rested - floor * meets.in_ohms, endless);
}

// A guess at who gives and who takes: a source behind a conductance. (28)
//   held   takes the most it takes
template <class Mask>
struct Way {
    Mask taking;
    Mask held;
};
// How packs meet the bus: at a moment, or in the mean of a step.
template <class Real, class Mask>
struct Facing {
    Meets<Real> meets;
    Amperes<Real> most_in;
    Way<Mask> way;
};
// What a step makes of them, each of one pack.
//   added    that charging adds to the resistance at the start, up to the knee
//   lag      of what charging meets in the mean above its start; of who took charge, `lagged`
//   current  at the terminals; `into` out of the wells, which then stand at `to`
template <class Real, class Mask>
struct InStep {
    Mean<Real> mean;
    Added<Real> added;
    Volts<Real> lag;
    Mask lagged;
    Amperes<Real> current;
    Amperes<Real> into;
    Standing<Real> to;
};

template <class Real>
struct Offers {
    PerOhm<Real> conducts;
    Amperes<Real> offers;
};
template <class Real, class Mask>
[[nodiscard, gnu::always_inline]] inline Offers<Real> offers_of(const Meets<Real>& meets,
                                                                Amperes<Real> most_in,
                                                                const Way<Mask>& way) {
    const PerOhm<Real> conducts =
        select(way.held, PerOhm<Real>{}, select(way.taking, meets.receiving, meets.giving));
    return {conducts, select(way.held, -most_in, conducts * meets.rested)};
}

// Who takes with the bus standing there; rounding alone turns nobody round.
template <class Real, class Mask>
[[nodiscard, gnu::always_inline]] inline Way<Mask> way_at(Volts<Real> node,
                                                          const Meets<Real>& meets,
                                                          Amperes<Real> most_in,
                                                          const Way<Mask>& before) {
    const Volts<Real> above = node - meets.rested;
    const Real margin = all<Real>(level);
    const Mask taking = above.value > select(before.taking, -margin, margin);
    const Mask held = taking & (above * meets.receiving > most_in);
    return {taking, held};
}

// Of one pack, positive out of it; rounding neither gives nor takes. (26), (27)
template <class Real, class Mask>
[[nodiscard, gnu::always_inline]] inline Amperes<Real> current_on_bus(Volts<Real> node,
                                                                      const Meets<Real>& meets,
                                                                      Amperes<Real> most_in,
                                                                      const Way<Mask>& way,
                                                                      const Real& per_count) {
    const Volts<Real> below = meets.rested - node;
    const Volts<Real> none{};
    const Amperes<Real> free = select(way.taking, smaller(none, below) * meets.receiving,
                                      larger(none, below) * meets.giving);
    return select(way.held, -most_in, free) * per_count;
}

// By what the mean of a step lies above what charging meets at its start, were the current all the
// while the one found with that; nothing of who gives. (63a)
template <class Real, Number Mask>
[[nodiscard, gnu::always_inline]] inline Volts<Real> lag_of(const Mask& taking,
                                                            Amperes<Real> current,
                                                            Amperes<Real> into, Ohms<Real> slope,
                                                            In<PerCoulomb> auto per_rated,
                                                            In<Seconds> auto time) {
    const Volts<Real> lag = mean_rise(slope, into, per_rated, time) * -current;
    return select(taking, lag, nothing_of(lag));
}

// Whether they take more than up to their knee. (61)
template <class Real>
[[nodiscard, gnu::always_inline]] inline auto beyond_knee(Volts<Real> node,
                                                          const Meets<Real>& meets,
                                                          Amperes<Real> most_in,
                                                          Amperes<Real> knee) {
    return smaller((node - meets.rested) * meets.receiving, most_in) > knee;
}

// ---- the bus

template <class Real>
struct BusPoint {
    Volts<Real> node;
    Volts<Real> voltage;
    Volts<Real> source;
    Amperes<Real> current;
    MaskOf<Real> possible;
};

// Given who gives and who takes. (28), (29), (35)
//   any_offered   some lane's power is negative
template <class Real>
[[nodiscard, gnu::always_inline]] inline BusPoint<Real> bus_of(
    Watts<Real> power, PerOhm<Real> conductance, Amperes<Real> offered, Volts<Real> highest_node,
    Volts<Real> absorption, Ohms<Real> shared, bool any_offered) {
    const Volts<Real> source = offered / conductance;
    const Ohms<Real> resistance = 1.0 / conductance + shared;
    const SquareVolts<Real> squared = under_root(source, resistance, power);
    BusPoint<Real> bus;
    bus.possible = (conductance > PerOhm<Real>{}) & (squared >= SquareVolts<Real>{}) &
                   (source > Volts<Real>{});
    if constexpr (one<Real>)
        if (!bus.possible) return bus;
    bus.source = source;
    bus.current = current_of(power, source, root_of(squared));
    bus.node = (offered - bus.current) / conductance;
    bus.voltage = bus.node - shared * bus.current;
    if (!any_offered) return bus;
    const auto held =
        (power < Watts<Real>{}) & !((bus.voltage <= absorption) & (bus.node <= highest_node));
    if (!any_of(held)) return bus;
    const Volts<Real> held_node = smaller<>(
        highest_node, Volts<Real>{(absorption + shared * offered) / (1.0 + shared * conductance)});
    const Amperes<Real> held_current = offered - conductance * held_node;
    const Volts<Real> held_voltage = held_node - shared * held_current;
    const auto takes =
        held_current < Amperes<Real>{};  // else they stand above what is offered them
    bus.node = select(held, select(takes, held_node, source), bus.node);
    bus.voltage = select(held, select(takes, held_voltage, source), bus.voltage);
    bus.source = select(held, select(takes, held_voltage, source), bus.source);
    bus.current = select(held, select(takes, held_current, Amperes<Real>{}), bus.current);
    return bus;
}

// ---- where the currents lead

// Whether a pack leaves its piece of the voltage, or is filled.
template <class Real, class Mask>
[[nodiscard, gnu::always_inline]] inline auto leaves_piece(const Mask& taking,
                                                           const Standing<Real>& to,
                                                           const Ends<Real>& ends) {
    return (taking & (to.available > all<Real>(1.0 + level))) |
           (to.available < ends.available_low) | (to.available > ends.available_high);
}

// Whether its bound well does, or a well turns round beyond the straight piece it stands on.
template <class Real>
[[nodiscard, gnu::always_inline]] inline auto leaves_beneath(
    const Standing<Real>& from, const Standing<Real>& to, Amperes<Real> into,
    const Constants<Real>& pack, const Ends<Real>& ends, Seconds<Real> time) {
    const auto rise = [&](Coulombs<Real> head) {
        return shortfall_rise(into, pack.bound, head_rise(into, pack.head_gain, pack.rate, head));
    };
    const Amperes<Real> before = rise(from.head);
    const Amperes<Real> after = rise(to.head);
    const Real beyond = larger(size_of(before), size_of(after)) * pack.per_total * time;
    const Real deeper = larger(size_of(from.head), size_of(to.head)) * pack.width * pack.rate *
                        pack.per_total * time;
    const auto crossed = before * after;
    const auto through = from.head * to.head;
    auto leaves = (to.bound < ends.bound_low) | (to.bound > ends.bound_high);
    leaves |= (crossed < nothing_of(crossed)) &
              ((smaller(from.available, to.available) - beyond < ends.available_low) |
               (larger(from.available, to.available) + beyond > ends.available_high));
    leaves |= (through < nothing_of(through)) &
              ((smaller(from.bound, to.bound) - deeper < ends.bound_low) |
               (larger(from.bound, to.bound) + deeper > ends.bound_high));
    return leaves;
}

// How far the packs of a bank have moved in a step, and parted.
template <class Real>
struct Moves {
    Volts<Real> rises;    // the most of what parts them
    Volts<Real> falls;    // likewise downwards
    Volts<Real> changes;  // the most of a rested voltage
    Real fills;           // and of a fill
};
template <class Real>
[[gnu::always_inline]] inline void widen(Moves<Real>& moves, Volts<Real> up, Volts<Real> down,
                                         Volts<Real> slope, const Real& filled) {
    moves.rises = larger(moves.rises, up);
    moves.falls = larger(moves.falls, down);
    moves.changes = larger(moves.changes, size_of(slope * filled));
    moves.fills = larger(moves.fills, size_of(filled));
}

// As the length of a step counts it: a power amplifies what a voltage does, and packs part; but a
// small part of the fill may pass in spite of both. (20b), (36)
template <class Real>
[[nodiscard, gnu::always_inline]] inline Volts<Real> moved_by(const Moves<Real>& moves,
                                                              const BusPoint<Real>& bus,
                                                              Watts<Real> power, double tolerance,
                                                              double fill_tolerance) {
    const Volts<Real> root = 2.0 * bus.voltage - bus.source;
    const auto amplifies = (root > Volts<Real>{}) & (bus.source > root);
    const Volts<Real> amplified =
        select(amplifies, moves.changes * (bus.source / root), moves.changes);
    const Volts<Real> parted = (moves.rises + moves.falls) / apart;
    const Volts<Real> change = select(amplified < parted, parted, amplified);
    const Real part = select(power > Watts<Real>{}, all<Real>(passes_discharging * fill_tolerance),
                             all<Real>(passes_charging * fill_tolerance));
    const Volts<Real> may_pass{tolerance * (moves.fills / part)};
    return select(may_pass < change, may_pass, change);
}

}  // namespace battery::step
