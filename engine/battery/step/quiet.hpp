// One step of a pack in which nothing is met on the way: the currents and wells it leads to, and
// whether indeed nothing was met. Written once for a double and for lanes; what a whole stride has
// in common is left out by a Kind, never changing a bit.
#pragma once

#include "battery/decay.hpp"
#include "battery/step/equations.hpp"
#include "battery/step/tolerances.hpp"

namespace battery::step {

//   may_charge      false where nobody is offered more than is taken: nothing limits a current
//   two_wells       false where no pack has a head difference
//   one_efficiency  of charging at every fill, which no pack then can leave
//   resists         charging meets more than the inner resistance
struct Kind {
    bool may_charge = true;
    bool two_wells = true;
    bool one_efficiency = false;
    bool resists = true;
};

// The straight piece of the rested voltage on which the available well stands.
template <class Real>
struct OnPiece {
    Volts<Real> at_zero;
    Volts<Real> slope;
};

// What a step does not change of a pack, or of all packs abreast: see battery::Prepared.
template <class Real>
struct Constants {
    PerCoulomb<Real> per_total;
    Real bound;
    Real width;
    Real head_gain;
    PerSecond<Real> rate;
};

// What charging meets beyond the inner resistance; see battery::ChargingResistance.
//   inner   that it stands for too
template <class Real>
struct Resists {
    Ohms<Real> when_empty;
    Real rise;
    PerCoulomb<Real> per_rated;
    Amperes<Real> knee;
    Real beyond;
    Ohms<Real> inner;
};

// What it adds to the inner resistance at a charge, up to the knee and beyond it; and by which
// either rises for each unit of charge.
template <class Real>
struct Added {
    Ohms<Real> up_to_knee;
    Ohms<Real> beyond;
    Ohms<Real> slope{};
    Ohms<Real> slope_beyond{};
};

template <class Real>
[[nodiscard, gnu::always_inline]] inline Ohms<Real> more_than(Ohms<Real> all, In<Ohms> auto inner) {
    const Ohms<Real> more = all - inner;
    return select(more > nothing_of(more), more, nothing_of(more));
}

// (60), (61)
template <class Real, class Shared>
[[nodiscard, gnu::always_inline]] inline Added<Real> added_at(Coulombs<Real> removed,
                                                              const Resists<Shared>& pack) {
    Real charge = whole_fill(removed, pack.per_rated);
    charge = select(charge < 0.0, 0.0, charge);
    charge = select(charge > 1.0, 1.0, charge);
    const Real per_short = 1.0 / (1.001 - charge);
    const Ohms<Real> all = charging_resistance(pack.when_empty, pack.rise, charge, per_short);
    const Ohms<Real> slope = charging_slope(pack.when_empty, pack.rise, per_short);
    const Added<Real> added{more_than<Real>(all, pack.inner),
                            more_than<Real>(all * pack.beyond, pack.inner)};
    const Ohms<Real> none{};
    return {added.up_to_knee, added.beyond, select(added.up_to_knee > none, slope, none),
            select(added.beyond > none, slope * pack.beyond, none)};
}

// A source that is charged: a voltage behind a resistance up to the knee, and beyond it. (61)
template <class Real>
struct Taking {
    Volts<Real> voltage;
    Ohms<Real> resistance;
    Volts<Real> at_knee;
    Volts<Real> beyond;
    Ohms<Real> resistance_beyond;
};

template <class Real>
[[nodiscard, gnu::always_inline]] inline Taking<Real> taking_of(Volts<Real> voltage,
                                                                Ohms<Real> resistance,
                                                                const Added<Real>& added,
                                                                In<Amperes> auto knee) {
    Taking<Real> taking;
    taking.voltage = voltage;
    taking.resistance = resistance + added.up_to_knee;
    taking.at_knee = voltage_at_knee(voltage, taking.resistance, knee);
    taking.resistance_beyond = resistance + added.beyond;
    taking.beyond = voltage_beyond(taking.at_knee, taking.resistance_beyond, knee);
    return taking;
}

template <class Real>
struct Standing {
    Coulombs<Real> removed;
    Coulombs<Real> head;
    Real available;
    Real bound;
};

// The voltage of a step without current, its fall for an ampere. (12)
template <class Real>
struct Mean {
    Volts<Real> at_rest;
    Ohms<Real> per_ampere;
};

template <Kind kind, class Real, class Shared>
[[nodiscard, gnu::always_inline]] inline Mean<Real> mean_of(const OnPiece<Real>& piece,
                                                            const Standing<Real>& from,
                                                            const Constants<Shared>& pack,
                                                            Number auto once,
                                                            In<PerAmpere> auto fills) {
    Real fill;
    if constexpr (kind.two_wells)
        fill = mean_fill(from.removed, from.head, pack.bound, once, pack.per_total);
    else
        fill = whole_fill(from.removed, pack.per_total);
    return {voltage_on(piece.at_zero, piece.slope, fill), volts_per_ampere(piece.slope, fills)};
}

// (13) and the limits of charging.
//   root, squared   of (13); squared is negative where the power cannot be had
//   free            were there no limits
//   held_*          the source against which absorption holds, of what takes charge with a knee
template <class Real>
struct Current {
    Amperes<Real> amount;
    Volts<Real> root;
    SquareVolts<Real> squared;
    Amperes<Real> free{};
    Volts<Real> held_voltage{};
    Ohms<Real> held_resistance{};
};

template <class Real>
[[nodiscard, gnu::always_inline]] inline Amperes<Real> charging_limited(Amperes<Real> free,
                                                                        Volts<Real> voltage,
                                                                        Ohms<Real> resistance,
                                                                        In<Amperes> auto floor,
                                                                        In<Volts> auto absorption) {
    const auto over = absorbed(voltage, absorption, resistance);
    const auto held = select(voltage >= absorption, nothing_of(over), over);
    const auto lowest = select(floor < held, held, floor);
    return select(free < lowest, lowest, free);
}

// Likewise of what takes charge with a knee; of no more power than nothing.
template <class Real>
[[nodiscard, gnu::always_inline]] inline Current<Real> charging_at(Watts<Real> power,
                                                                   const Taking<Real>& taking,
                                                                   In<Amperes> auto knee,
                                                                   In<Amperes> auto floor,
                                                                   In<Volts> auto absorption) {
    const auto fast = -power > power_at_knee(taking.at_knee, knee);
    const Volts<Real> voltage = select(fast, taking.beyond, taking.voltage);
    const Ohms<Real> resistance = select(fast, taking.resistance_beyond, taking.resistance);
    const SquareVolts<Real> squared = under_root(voltage, resistance, power);
    const Volts<Real> root = root_of(squared);
    const Amperes<Real> free = current_of(power, voltage, root);
    const auto held_fast = taking.at_knee < absorption;
    const Volts<Real> held = select(held_fast, taking.beyond, taking.voltage);
    const Ohms<Real> against = select(held_fast, taking.resistance_beyond, taking.resistance);
    const auto limited = charging_limited<Real>(free, held, against, floor, absorption);
    return {limited, root, squared, free, held, against};
}

// Both abreast: what some lanes are offered is asked of others.
template <class Real>
[[nodiscard, gnu::always_inline]] inline Current<Real> current_either_way(
    Watts<Real> power, Ohms<Real> resistance, const Taking<Real>& taking, In<Amperes> auto knee,
    In<Amperes> auto floor, In<Volts> auto absorption) {
    const auto fast = -power > power_at_knee(taking.at_knee, knee);
    const auto charges = power < nothing_of(power);
    const Volts<Real> voltage = select(fast, taking.beyond, taking.voltage);
    const Ohms<Real> of_power =
        select(fast, taking.resistance_beyond, select(charges, taking.resistance, resistance));
    const SquareVolts<Real> squared = under_root(voltage, of_power, power);
    const auto none = nothing_of(squared);
    const Volts<Real> root = root_of(select(squared > none, squared, none));
    const Amperes<Real> free = current_of(power, voltage, root);
    const auto held_fast = taking.at_knee < absorption;
    const Volts<Real> held = select(held_fast, taking.beyond, taking.voltage);
    const Ohms<Real> against = select(held_fast, taking.resistance_beyond, taking.resistance);
    const auto limited = charging_limited<Real>(free, held, against, floor, absorption);
    return {select(free < nothing_of(free), limited, free), root, squared, free, held, against};
}

// A charging current's parts up to the knee and beyond it, as magnitudes, in the voltage that they
// add. (62)
template <class Real>
[[nodiscard, gnu::always_inline]] inline Volts<Real> rise_at(Amperes<Real> current,
                                                             const Added<Real>& added,
                                                             In<Amperes> auto knee) {
    const Amperes<Real> in = -current;
    const Amperes<Real> over = in - knee;
    const auto fast = over > nothing_of(over);
    const Amperes<Real> beyond = select(fast, over, nothing_of(over));
    return charging_rise(added.up_to_knee, added.beyond, in - beyond, beyond);
}

// By what the mean of a step lies above what charging meets at its start, were the current all the
// while this one, and what of it arrives in the wells. (63a)
template <class Real>
[[nodiscard, gnu::always_inline]] inline Volts<Real> lag_at(
    Amperes<Real> current, Amperes<Real> into, const Added<Real>& added,
    In<PerCoulomb> auto per_rated, In<Amperes> auto knee, In<Seconds> auto time) {
    return rise_at<Real>(current,
                         {mean_rise(added.slope, into, per_rated, time),
                          mean_rise(added.slope_beyond, into, per_rated, time)},
                         knee);
}

// What it stands against when all of it lies higher.
template <class Real>
[[nodiscard, gnu::always_inline]] inline Taking<Real> higher(const Taking<Real>& taking,
                                                             Volts<Real> rise) {
    return {taking.voltage + rise, taking.resistance, taking.at_knee + rise, taking.beyond + rise,
            taking.resistance_beyond};
}
// The current when all that it stands against lies so much higher, and it were there no limits: by
// Newton's step from the first one, whose error is the square of a hair.
template <class Real>
struct Lagging {
    Amperes<Real> amount;
    Amperes<Real> free;
};
template <class Real>
[[nodiscard, gnu::always_inline]] inline Lagging<Real> lagging(const Current<Real>& first,
                                                               Volts<Real> lag,
                                                               In<Amperes> auto floor,
                                                               In<Volts> auto absorption) {
    const Amperes<Real> free = first.free * (first.root / (first.root + lag));
    const auto limited = charging_limited<Real>(free, first.held_voltage + lag,
                                                first.held_resistance, floor, absorption);
    return {select(free < nothing_of(free), limited, free), free};
}

template <Kind kind, class Real>
[[nodiscard, gnu::always_inline]] inline Current<Real> current_at(Watts<Real> power,
                                                                  Volts<Real> voltage,
                                                                  Ohms<Real> resistance,
                                                                  In<Amperes> auto floor,
                                                                  In<Volts> auto absorption) {
    const SquareVolts<Real> squared = under_root(voltage, resistance, power);
    const auto none = nothing_of(squared);
    const Volts<Real> root = root_of(select(squared > none, squared, none));
    const Amperes<Real> free = current_of(power, voltage, root);
    if constexpr (!kind.may_charge) return {free, root, squared};
    const auto limited = charging_limited(free, voltage, resistance, floor, absorption);
    return {select(free < nothing_of(free), limited, free), root, squared};
}

// Where a current into (negative) or out of the wells leads. (2), (3)
template <Kind kind, class Real, class Shared>
[[nodiscard, gnu::always_inline]] inline Standing<Real> stand_after(
    const Standing<Real>& from, Amperes<Real> into, const Constants<Shared>& pack,
    In<Seconds> auto time, Number auto left, Number auto once) {
    Standing<Real> to;
    to.removed = removed_after(from.removed, into, time);
    if constexpr (kind.two_wells) {
        to.head = head_after(from.head, left, into, pack.head_gain, time, once);
        to.available = available_fill(to.removed, to.head, pack.bound, pack.per_total);
        to.bound = bound_fill(to.removed, to.head, pack.width, pack.per_total);
    } else {
        to.head = nothing_of(from.head);
        to.available = whole_fill(to.removed, pack.per_total);
        to.bound = to.available;
    }
    return to;
}

// Whether the available well's shortfall, or the head, turns round between the two.
template <class Real, class Shared>
[[nodiscard, gnu::always_inline]] inline auto shortfall_turns(const Standing<Real>& from,
                                                              const Standing<Real>& to,
                                                              Amperes<Real> into,
                                                              const Constants<Shared>& pack) {
    const auto rise = [&](Coulombs<Real> head) {
        return shortfall_rise(into, pack.bound, head_rise(into, pack.head_gain, pack.rate, head));
    };
    const auto product = rise(from.head) * rise(to.head);
    return product < nothing_of(product);
}
template <class Real>
[[nodiscard, gnu::always_inline]] inline auto head_turns(const Standing<Real>& from,
                                                         const Standing<Real>& to) {
    const auto product = from.head * to.head;
    return product < nothing_of(product);
}

// The ends of the pieces, met when a fill is at or below a low one or above a high one.
template <class Real>
struct Ends {
    Real available_low;
    Real available_high;
    Real bound_low;
    Real bound_high;
};

// The glance (25).
template <class Real>
struct Glance {
    Volts<Real> near;
    PerAmpere<Real> near_per_watt;
    Volts<Real> limit;
    PerAmpere<Real> limit_per_watt;
};

// Far from every threshold that a discharge meets. (22), (25)
template <class Real>
[[nodiscard, gnu::always_inline]] inline auto far_from_falling(const Glance<Real>& glance,
                                                               Watts<Real> power,
                                                               Volts<Real> lowest,
                                                               Ohms<Real> resistance,
                                                               In<Volts> auto empty) {
    auto far = both(holds<Real>(), lowest > empty);
    far = both(far, lowest > far_above(glance.near, glance.near_per_watt, power));
    far = both(far, lowest > far_above(glance.limit, glance.limit_per_watt, power));
    return both(far, can_be_had(lowest, resistance, power));
}

// Whether wells stay on their pieces and do not turn round, and the voltage within its tolerance.
template <Kind kind, class Real, class Shared>
[[nodiscard, gnu::always_inline]] inline auto stays(auto so_far, const Standing<Real>& from,
                                                    const Standing<Real>& to, Amperes<Real> into,
                                                    const Constants<Shared>& pack,
                                                    const Ends<Real>& ends, Volts<Real> change,
                                                    Volts<Real> at_rest, Volts<Real> tolerance,
                                                    Volts<Real> root) {
    if constexpr (kind.two_wells) {
        so_far = both(so_far, !shortfall_turns(from, to, into, pack));
        so_far = both(so_far, !head_turns(from, to));
    }
    so_far = both(so_far, to.available > ends.available_low);
    so_far = both(so_far, to.available <= ends.available_high);
    so_far = both(so_far, to.bound > ends.bound_low);
    so_far = both(so_far, to.bound <= ends.bound_high);
    return both(so_far, within_tolerance(change, at_rest, tolerance, root));
}

// Where a charge falls from the bound well's voltage to the available one's, it heats. (18)
//   decayed   a Decay, or lanes of them
template <class Real, class Shared>
[[nodiscard, gnu::always_inline]] inline Joules<Real> lost_between(
    const OnPiece<Real>& available, const OnPiece<Real>& bound, const Standing<Real>& from,
    Amperes<Real> into, const Constants<Shared>& pack, In<PerSecond> auto exchange,
    In<Seconds> auto time, const auto& decayed) {
    const auto& d = decayed;
    const auto gain = gained(into, pack.head_gain, time);
    const auto head = mean_head(from.head, gain, d.once, d.twice);
    const auto removed_head = mean_removed_head(from.removed, head, into * time, from.head, gain,
                                                d.once, d.twice, d.thrice);
    const auto head_squared =
        mean_head_squared(from.head, gain, d.left, d.once, d.twice, d.thrice, pack.rate, time);
    // bound minus available voltage = unlike + by_removed * removed + by_head * head
    const auto unlike = (bound.at_zero + bound.slope) - (available.at_zero + available.slope);
    const auto by_removed = (available.slope - bound.slope) * pack.per_total;
    const auto by_head = (available.slope * pack.bound + bound.slope * pack.width) * pack.per_total;
    return exchange * time * (unlike * head + by_removed * removed_head + by_head * head_squared);
}

}  // namespace battery::step
