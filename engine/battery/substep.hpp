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
#include "battery/step/quiet.hpp"

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

// A pack alone is stepped by one double, with every rule of the step.
inline constexpr step::Kind of_any_kind{};

[[nodiscard, gnu::always_inline]] inline step::Constants<double> constants_of(
    const Prepared& pack) {
    return {{pack.per_total}, pack.bound, pack.width, pack.head_gain, {pack.rate}};
}

[[nodiscard, gnu::always_inline]] inline double available_of(const Prepared& pack, double removed,
                                                             double head) {
    return step::available_fill(step::Coulombs<double>{removed}, step::Coulombs<double>{head},
                                pack.bound, step::PerCoulomb<double>{pack.per_total});
}
[[nodiscard, gnu::always_inline]] inline double bound_of(const Prepared& pack, double removed,
                                                         double head) {
    return step::bound_fill(step::Coulombs<double>{removed}, step::Coulombs<double>{head},
                            pack.width, step::PerCoulomb<double>{pack.per_total});
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

[[nodiscard, gnu::always_inline]] inline step::Standing<double> standing(const WellState& state) {
    return {{state.removed}, {state.head}, state.available, state.bound};
}
[[nodiscard, gnu::always_inline]] inline step::OnPiece<double> on(const Piece& piece) {
    return {{piece.at_zero}, {piece.slope}};
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
    const auto fills =
        step::fill_per_ampere(step::Seconds<double>{time}, pack.bound_gain, decayed.twice,
                              step::PerCoulomb<double>{pack.per_total});
    const auto mean = step::mean_of<of_any_kind, double>(on(piece), standing(state),
                                                         constants_of(pack), decayed.once, fills);
    return {.at_rest = mean.at_rest.value, .per_ampere = mean.per_ampere.value};
}

// A current and how steeply it answers a change of voltage: `root` is the square root of the
// quadratic, `at_rest` beyond it when there is none. Not possible: more power than there is.
struct Drawn {
    double current = 0.0;  // at the terminals
    double root = 1.0;
    bool possible = true;
};

// From a source of this voltage behind this resistance. (13)
[[nodiscard, gnu::always_inline]] inline Drawn drawn(const Prepared& pack, AtPower demand,
                                                     double voltage, double resistance) {
    // step::current_at, but what one pack alone need not work out, it does not
    const step::Volts<double> at_rest{voltage};
    const step::Watts<double> power{demand.amount};
    const auto squared = step::under_root(at_rest, step::Ohms<double>{resistance}, power);
    if (!(squared.value >= 0.0)) return {.possible = false};
    const auto root = step::root_of(squared);
    auto current = step::current_of(power, at_rest, root);
    if (current.value < 0.0)
        current = step::charging_limited<double>(current, at_rest, {resistance},
                                                 step::Amperes<double>{pack.charge_floor},
                                                 step::Volts<double>{pack.absorption});
    return {.current = current.value, .root = root.value};
}

[[nodiscard, gnu::always_inline]] inline Drawn drawn(const Prepared& pack, AtCurrent demand,
                                                     double voltage, double resistance) {
    if (!(demand.amount < 0.0)) return {.current = demand.amount, .root = voltage};
    const auto limited = step::charging_limited<double>({demand.amount}, {voltage}, {resistance},
                                                        step::Amperes<double>{pack.charge_floor},
                                                        step::Volts<double>{pack.absorption});
    return {.current = limited.value, .root = voltage};
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
[[nodiscard, gnu::always_inline]] inline double counted_change(double change, double filled,
                                                               double tolerance,
                                                               double fill_tolerance,
                                                               bool discharging) {
    const double part = discharging ? step::passes_discharging : step::passes_charging;
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
        drawn(pack, demand, mean.at_rest,
              step::resistance_of_step(step::Ohms<double>{pack.resistance}, arriving,
                                       step::Ohms<double>{mean.per_ampere})
                  .value);
    trial.possible = taken.possible;
    trial.root = taken.root;
    trial.at_rest = mean.at_rest;
    trial.current = taken.current;
    trial.into = arriving * taken.current;
    trial.mean_rested =
        step::mean_rested(step::Volts<double>{mean.at_rest}, step::Ohms<double>{mean.per_ampere},
                          step::Amperes<double>{trial.into})
            .value;
    const auto to = step::stand_after<of_any_kind, double>(
        standing(state), {trial.into}, constants_of(pack), step::Seconds<double>{time},
        trial.decayed.left, trial.decayed.once);
    trial.removed = to.removed.value;
    trial.head = to.head.value;
    trial.available = to.available;
    trial.bound = to.bound;
    return trial;
}

// Where a charge falls from the bound well's voltage to the available one's, it heats. (18)
[[nodiscard, gnu::always_inline]] inline double lost_between_wells(const Prepared& pack,
                                                                   const WellState& state,
                                                                   const Trial& trial) {
    const Piece& available = pack.open_circuit->piece(state.available_piece);
    const Piece& bound = pack.open_circuit->piece(state.bound_piece);
    return step::lost_between<double>(on(available), on(bound), standing(state), {trial.into},
                                      constants_of(pack), step::PerSecond<double>{pack.exchange},
                                      step::Seconds<double>{trial.time}, trial.decayed)
        .value;
}

// Rate of rise of the head difference and, in charge, of the available well's shortfall.
[[nodiscard, gnu::always_inline]] inline double head_rise(const Prepared& pack, double head,
                                                          double into) {
    return step::head_rise(step::Amperes<double>{into}, pack.head_gain,
                           step::PerSecond<double>{pack.rate}, step::Coulombs<double>{head})
        .value;
}
[[nodiscard, gnu::always_inline]] inline double shortfall_rise(const Prepared& pack, double head,
                                                               double into) {
    return step::shortfall_rise(step::Amperes<double>{into}, pack.bound,
                                step::Amperes<double>{head_rise(pack, head, into)})
        .value;
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
    const step::Amperes<double> current{trial.current};
    const step::Amperes<double> into{trial.into};
    const step::Seconds<double> time{trial.time};
    const step::Volts<double> rested{trial.mean_rested};
    const step::Ohms<double> resistance{pack.resistance};
    const step::Coulombs<double> charge = current * time;
    const step::Joules<double> energy = step::at_far_end(charge, rested, current, resistance);
    flow.in_resistance += step::in_resistance(charge, current, resistance).value;
    flow.between_wells += lost_between_wells(pack, state, trial);
    if (charge.value < 0.0) {
        flow.accepted -= energy.value;
        flow.charge_in -= charge.value;
        flow.in_charging += step::in_charging(into, current, time, rested).value;
    } else {
        flow.delivered += energy.value;
        flow.charge_out += charge.value;
    }
}

}  // namespace battery
