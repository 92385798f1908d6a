// One stretch of time at one current, in plain SI numbers: the inner loop of the clock.
// Everything here is exact for a constant current while both wells stay on their straight piece of
// the rested voltage, and charging on its piece of the efficiency; who calls sees to that.
// method.md (12) to (20)
#pragma once

#include <algorithm>
#include <cmath>
#include <limits>

#include "battery/decay.hpp"
#include "battery/prepared.hpp"

namespace battery {

// What is asked of one pack at the far end of its path: positive is taken, negative is offered.
struct AtPower {
    double amount = 0.0;  // W
};
struct AtCurrent {
    double amount = 0.0;  // A
};

// The wells, their fills, the piece of the rested voltage on which each stands, and the piece of
// the efficiency of charging on which both together do.
struct WellState {
    double removed = 0.0;  // C
    double head = 0.0;     // C
    double available = 1.0;
    double bound = 1.0;
    int available_piece = 0;
    int bound_piece = 0;
    int charging_piece = 0;
};

[[nodiscard, gnu::always_inline]] inline double available_of(const Prepared& pack, double removed,
                                                             double head) {
    return 1.0 - (removed + pack.bound * head) * pack.per_total;
}
[[nodiscard, gnu::always_inline]] inline double bound_of(const Prepared& pack, double removed,
                                                         double head) {
    return 1.0 - (removed - pack.width * head) * pack.per_total;
}

[[nodiscard, gnu::always_inline]] inline int charging_piece_of(const Prepared& pack,
                                                               double removed) {
    int piece = 0;
    while (removed <= pack.coulombic_edge[piece + 1] && piece + 1 < ChargeEfficiency::most_pieces)
        ++piece;
    return piece;
}

[[nodiscard, gnu::always_inline]] inline WellState state_of(const Prepared& pack, double removed,
                                                            double head) {
    WellState state{.removed = removed,
                    .head = head,
                    .available = available_of(pack, removed, head),
                    .bound = bound_of(pack, removed, head)};
    state.available_piece = pack.open_circuit->piece_of(state.available);
    state.bound_piece = pack.open_circuit->piece_of(state.bound);
    state.charging_piece = charging_piece_of(pack, removed);
    return state;
}

[[nodiscard, gnu::always_inline]] inline double rested_voltage(const Prepared& pack,
                                                               const WellState& state) {
    const Piece& piece = pack.open_circuit->piece(state.available_piece);
    return piece.at_zero + piece.slope * state.available;
}

[[nodiscard, gnu::always_inline]] inline double coulombic(const Prepared& pack,
                                                          const WellState& state) {
    return pack.coulombic[state.charging_piece];
}
// Removed charge at which charging comes to the next piece of its efficiency; minus infinity on the
// last.
[[nodiscard, gnu::always_inline]] inline double next_charging_piece(const Prepared& pack,
                                                                    const WellState& state) {
    return pack.coulombic_edge[state.charging_piece + 1];
}

// The mean rested voltage over a time is at_rest - per_ampere * current, the current being that
// into (negative) or out of the wells: what several packs on one bus share a current by. (12)
struct MeanVoltage {
    double at_rest = 0.0;
    double per_ampere = 0.0;
};

[[nodiscard, gnu::always_inline]] inline MeanVoltage mean_voltage(const Prepared& pack,
                                                                  const WellState& state,
                                                                  const Decay& decayed,
                                                                  double time) {
    const Piece& piece = pack.open_circuit->piece(state.available_piece);
    const double mean_fill =
        1.0 - (state.removed + pack.bound * state.head * decayed.once) * pack.per_total;
    const double fill_per_ampere = time * (0.5 + pack.bound_gain * decayed.twice) * pack.per_total;
    return {.at_rest = piece.at_zero + piece.slope * mean_fill,
            .per_ampere = piece.slope * fill_per_ampere};
}

// A current and how steeply it answers a change of voltage: `root` is the square root of the
// quadratic, `at_rest` beyond it when there is none. Not possible: more power than there is.
struct Drawn {
    double current = 0.0;  // at the terminals
    double root = 1.0;
    bool possible = true;
};

// The voltage that absorption leaves for the resistance, as a current not above 0.
[[nodiscard, gnu::always_inline]] inline double absorption_current(const Prepared& pack,
                                                                   double voltage,
                                                                   double resistance) {
    if (voltage >= pack.absorption) return 0.0;
    return (voltage - pack.absorption) / resistance;  // minus infinity without resistance
}

[[nodiscard, gnu::always_inline]] inline double within_charge_limits(const Prepared& pack,
                                                                     double current, double voltage,
                                                                     double resistance) {
    return std::max({current, pack.charge_floor, absorption_current(pack, voltage, resistance)});
}

// From a source of this voltage behind this resistance. (13)
[[nodiscard, gnu::always_inline]] inline Drawn drawn(const Prepared& pack, AtPower demand,
                                                     double voltage, double resistance) {
    const double under_root = voltage * voltage - 4.0 * resistance * demand.amount;
    if (!(under_root >= 0.0)) return {.possible = false};
    const double root = std::sqrt(under_root);
    double current = 2.0 * demand.amount / (voltage + root);
    if (current < 0.0) current = within_charge_limits(pack, current, voltage, resistance);
    return {.current = current, .root = root};
}

[[nodiscard, gnu::always_inline]] inline Drawn drawn(const Prepared& pack, AtCurrent demand,
                                                     double voltage, double resistance) {
    double current = demand.amount;
    if (current < 0.0) current = within_charge_limits(pack, current, voltage, resistance);
    return {.current = current, .root = voltage};
}

// Largest change of the rested voltage within one substep on this piece, V.
[[nodiscard, gnu::always_inline]] inline double tolerance_on(const Prepared& pack,
                                                             const Piece& piece) {
    return std::max(pack.tolerance, pack.fill_tolerance * piece.slope);
}

// The slope by which a change of fill counts against the plain tolerance.
[[nodiscard, gnu::always_inline]] inline double counted_slope(const Prepared& pack,
                                                              const Piece& piece) {
    return piece.slope * pack.tolerance / tolerance_on(pack, piece);
}

// A change of the voltage as the length of a substep counts it: a power amplifies what it does to
// the terminals, near the largest power without end, and packs part where it is steep; but this
// part of the fill that may pass where the voltage is steep may pass at once in spite of that.
// method.md (20b)
inline constexpr double passes_discharging = 0.5;
inline constexpr double passes_charging = 0.25;
[[nodiscard, gnu::always_inline]] inline double counted_change(double change, double filled,
                                                               double tolerance,
                                                               double fill_tolerance,
                                                               bool discharging) {
    const double part = discharging ? passes_discharging : passes_charging;
    return std::min(change, tolerance * (filled / (part * fill_tolerance)));
}

// A trial: where the wells would be after a time, and at what currents.
struct Trial {
    double time = 0.0;
    Decay decayed = {};
    double current = 0.0;  // at the terminals, and so the power
    double into = 0.0;     // out of the wells; the same when discharging, less when charging
    double mean_rested = 0.0;
    double root = 1.0;
    double at_rest = 1.0;  // mean rested voltage were there no current
    bool possible = true;
    double removed = 0.0;
    double head = 0.0;
    double available = 1.0;
    double bound = 1.0;
};

template <class Demand>
[[nodiscard, gnu::always_inline]] inline Trial try_for(const Prepared& pack, const WellState& state,
                                                       Demand demand, double time) {
    Trial trial{.time = time, .decayed = decay(pack.rate * time)};
    const MeanVoltage mean = mean_voltage(pack, state, trial.decayed, time);
    const double arriving = demand.amount < 0.0 ? coulombic(pack, state) : 1.0;
    const Drawn taken =
        drawn(pack, demand, mean.at_rest, pack.resistance + arriving * mean.per_ampere);
    trial.possible = taken.possible;
    trial.root = taken.root;
    trial.at_rest = mean.at_rest;
    trial.current = taken.current;
    trial.into = arriving * taken.current;
    trial.mean_rested = mean.at_rest - mean.per_ampere * trial.into;
    trial.removed = state.removed + trial.into * time;
    trial.head =
        state.head * trial.decayed.left + trial.into * pack.head_gain * time * trial.decayed.once;
    trial.available = available_of(pack, trial.removed, trial.head);
    trial.bound = bound_of(pack, trial.removed, trial.head);
    return trial;
}

// Where a charge falls from the bound well's voltage to the available one's, it heats. (18)
[[nodiscard, gnu::always_inline]] inline double lost_between_wells(const Prepared& pack,
                                                                   const WellState& state,
                                                                   const Trial& trial) {
    const Piece& available = pack.open_circuit->piece(state.available_piece);
    const Piece& bound = pack.open_circuit->piece(state.bound_piece);
    const Decay& d = trial.decayed;
    const double time = trial.time;
    const double gain = trial.into * pack.head_gain * time;  // head gained were there no exchange
    // integrals over the time of head, removed * head and head squared, each divided by the time
    const double head = state.head * d.once + gain * d.twice;
    const double removed_head =
        state.removed * head +
        trial.into * time * (state.head * (d.once - d.twice) + gain * (d.twice - d.thrice));
    const double head_squared =
        d.once * state.head * (0.5 * (1.0 + d.left) * state.head + d.once * gain) +
        gain * gain * (d.twice - d.thrice - 0.5 * pack.rate * time * d.twice * d.twice);
    // bound minus available voltage = apart + by_removed * removed + by_head * head
    const double apart = (bound.at_zero + bound.slope) - (available.at_zero + available.slope);
    const double by_removed = (available.slope - bound.slope) * pack.per_total;
    const double by_head =
        (available.slope * pack.bound + bound.slope * pack.width) * pack.per_total;
    return pack.exchange * time *
           (apart * head + by_removed * removed_head + by_head * head_squared);
}

// Rate of rise of the head difference and, in charge, of the available well's shortfall.
[[nodiscard, gnu::always_inline]] inline double head_rise(const Prepared& pack, double head,
                                                          double into) {
    return into * pack.head_gain - pack.rate * head;
}
[[nodiscard, gnu::always_inline]] inline double shortfall_rise(const Prepared& pack, double head,
                                                               double into) {
    return into + pack.bound * head_rise(pack, head, into);
}

// What has flowed, in J and C; each at least 0.
struct Flow {
    double delivered = 0.0;
    double accepted = 0.0;
    double in_resistance = 0.0;
    double between_wells = 0.0;
    double in_charging = 0.0;
    double charge_out = 0.0;
    double charge_in = 0.0;
};

[[gnu::always_inline]] inline void add(Flow& flow, const Prepared& pack, const WellState& state,
                                       const Trial& trial) {
    const double charge = trial.current * trial.time;
    const double energy = charge * (trial.mean_rested - trial.current * pack.resistance);
    flow.in_resistance += charge * trial.current * pack.resistance;
    flow.between_wells += lost_between_wells(pack, state, trial);
    if (charge < 0.0) {
        flow.accepted -= energy;
        flow.charge_in -= charge;
        flow.in_charging += (trial.into - trial.current) * trial.time * trial.mean_rested;
    } else {
        flow.delivered += energy;
        flow.charge_out += charge;
    }
}

}  // namespace battery
