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

// The same while charge goes in.
[[nodiscard, gnu::always_inline]] inline step::OnPiece<double> charging_on(const Piece& piece) {
    return {{piece.at_zero + piece.above_at_zero}, {piece.slope + piece.steeper}};
}
[[nodiscard, gnu::always_inline]] inline step::Resists<double> resists_of(const Prepared& pack) {
    return {{pack.charging_empty}, pack.charging_rise,   {pack.per_rated},
            {pack.charging_knee},  pack.charging_beyond, {pack.inner}};
}
[[nodiscard, gnu::always_inline]] inline step::Added<double> added_at(const Prepared& pack,
                                                                      double removed) {
    if (!pack.resists) return {};
    return step::added_at<double>(step::Coulombs<double>{removed}, resists_of(pack));
}

[[nodiscard, gnu::always_inline]] inline double rested_voltage(const Prepared& pack,
                                                               const WellState& state) {
    const Piece& piece = pack.open_circuit->piece(state.available_piece);
    return piece.at_zero + piece.slope * state.available;
}

[[nodiscard, gnu::always_inline]] inline double charging_voltage(const Prepared& pack,
                                                                 const WellState& state) {
    const auto piece = charging_on(pack.open_circuit->piece(state.available_piece));
    return piece.at_zero.value + piece.slope.value * state.available;
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

[[nodiscard, gnu::always_inline]] inline MeanVoltage mean_voltage(
    const step::OnPiece<double>& piece, const Prepared& pack, const WellState& state,
    const Decay& decayed, double time) {
    const auto fills =
        step::fill_per_ampere(step::Seconds<double>{time}, pack.bound_gain, decayed.twice,
                              step::PerCoulomb<double>{pack.per_total});
    const auto mean = step::mean_of<of_any_kind, double>(piece, standing(state), constants_of(pack),
                                                         decayed.once, fills);
    return {.at_rest = mean.at_rest.value, .per_ampere = mean.per_ampere.value};
}
[[nodiscard, gnu::always_inline]] inline MeanVoltage mean_voltage(const Prepared& pack,
                                                                  const WellState& state,
                                                                  const Decay& decayed,
                                                                  double time) {
    return mean_voltage(on(pack.open_circuit->piece(state.available_piece)), pack, state, decayed,
                        time);
}

// A current and how steeply it answers a change of voltage: `root` is the square root of the
// quadratic, `at_rest` beyond it when there is none. Not possible: more power than there is.
struct Drawn {
    double current = 0.0;  // at the terminals
    double root = 1.0;
    bool possible = true;
    double free = 0.0;  // were there no limits, of what takes charge with a knee
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

// A pack that is offered charge: its voltage without current, what that and the resistance change
// to beyond the knee, and whether there is one.
struct Charged {
    step::Taking<double> taking{};
    bool has_knee = false;
};

[[nodiscard, gnu::always_inline]] inline Charged charged(const Prepared& pack, double voltage,
                                                         double resistance,
                                                         const step::Added<double>& added) {
    if (!pack.resists) return {.taking = {{voltage}, {resistance}, {}, {}, {}}};
    return {.taking = step::taking_of<double>({voltage}, {resistance}, added,
                                              step::Amperes<double>{pack.charging_knee}),
            .has_knee = true};
}

[[nodiscard, gnu::always_inline]] inline Drawn drawn(const Prepared& pack, AtPower demand,
                                                     const Charged& into) {
    if (!into.has_knee)
        return drawn(pack, demand, into.taking.voltage.value, into.taking.resistance.value);
    const auto current = step::charging_at<double>(
        {demand.amount}, into.taking, step::Amperes<double>{pack.charging_knee},
        step::Amperes<double>{pack.charge_floor}, step::Volts<double>{pack.absorption});
    return {
        .current = current.amount.value, .root = current.root.value, .free = current.free.value};
}
[[nodiscard, gnu::always_inline]] inline Drawn drawn(const Prepared& pack, AtCurrent demand,
                                                     const Charged& into) {
    const auto& taking = into.taking;
    const bool fast = into.has_knee && taking.at_knee.value < pack.absorption;
    return drawn(pack, demand, fast ? taking.beyond.value : taking.voltage.value,
                 fast ? taking.resistance_beyond.value : taking.resistance.value);
}

// The same with what it stands against so much higher. (63a)
//   from   the current before that
[[nodiscard, gnu::always_inline]] inline Drawn lagging(const Prepared& pack, AtPower,
                                                       const Drawn& from, const Charged& into,
                                                       step::Volts<double> lag) {
    const auto& taking = into.taking;
    const bool fast = taking.at_knee.value < pack.absorption;
    const step::Current<double> first{
        .amount = {from.current},
        .root = {from.root},
        .squared = {},
        .free = {from.free},
        .held_voltage = fast ? taking.beyond : taking.voltage,
        .held_resistance = fast ? taking.resistance_beyond : taking.resistance};
    const auto current = step::lagging<double>(first, lag, step::Amperes<double>{pack.charge_floor},
                                               step::Volts<double>{pack.absorption});
    return {.current = current.amount.value, .root = from.root, .free = current.free.value};
}
[[nodiscard, gnu::always_inline]] inline Drawn lagging(const Prepared& pack, AtCurrent demand,
                                                       const Drawn&, Charged into,
                                                       step::Volts<double> lag) {
    into.taking = step::higher(into.taking, lag);
    return drawn(pack, demand, into);
}

// Where charging has a steep curve of its own, the mean current that absorption takes in a step: it
// comes to its voltage and never passes it, as the mean of (13) does when a step is long.
//   per_ampere   of Q, by what the voltage rises within the step. (20a)
[[nodiscard, gnu::always_inline]] inline double not_past_absorption(const Prepared& pack,
                                                                    double current,
                                                                    const Charged& into,
                                                                    double per_ampere) {
    const auto& taking = into.taking;
    const bool fast = into.has_knee && taking.at_knee.value < pack.absorption;
    const step::Volts<double> voltage = fast ? taking.beyond : taking.voltage;
    const auto of_step = fast ? taking.resistance_beyond : taking.resistance;
    if (!(current < 0.0) || !(voltage.value < pack.absorption)) return current;
    const step::Ohms<double> rises{2.0 * per_ampere};
    const double part = rises.value / (of_step.value - per_ampere);
    const auto held =
        step::settling(voltage, step::Volts<double>{pack.absorption}, rises,
                       part < std::numeric_limits<double>::infinity() ? -std::expm1(-part) : 1.0);
    return rises.value > 0.0 ? std::max(current, held.value) : current;
}

// Volts by which the terminals stand above the rested voltage and the inner resistance's.
[[nodiscard, gnu::always_inline]] inline double risen(const Prepared& pack, double current,
                                                      const step::Added<double>& added) {
    if (!pack.resists || !(current < 0.0)) return 0.0;
    return step::rise_at<double>({current}, added, step::Amperes<double>{pack.charging_knee}).value;
}

// Largest change of the rested voltage within one substep on this piece, V.
[[nodiscard, gnu::always_inline]] inline double tolerance_on(const Prepared& pack,
                                                             const Piece& piece) {
    return std::max(pack.tolerance, pack.fill_tolerance * piece.slope);
}
// Likewise of the charging voltage.
[[nodiscard, gnu::always_inline]] inline double tolerance_on(const Prepared& pack,
                                                             const Piece& piece, bool charges) {
    const double slope = charges ? piece.slope + piece.steeper : piece.slope;
    return std::max(pack.tolerance, pack.fill_tolerance * slope);
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

// Whether the pack is offered charge, and then stands higher than the rested voltage and the inner
// resistance make it.
template <class Demand>
[[nodiscard, gnu::always_inline]] inline bool rises(const Prepared& pack, Demand demand) {
    return demand.amount < 0.0 && (pack.resists || pack.stands_above);
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
    double rise = 0.0;     // of the mean charging voltage above mean_rested - resistance * current
    double drift = 0.0;    // of the charging voltage within the time, by the charge alone
    bool possible = true;
    double removed = 0.0;
    double head = 0.0;
    double available = 1.0;
    double bound = 1.0;
};

// (63a), at the current that the start alone would make
[[nodiscard, gnu::always_inline]] inline step::Volts<double> lag_at(
    const Prepared& pack, double current, double arriving, const step::Added<double>& added,
    double time) {
    return step::lag_at<double>(
        {current}, {arriving * current}, added, step::PerCoulomb<double>{pack.per_rated},
        step::Amperes<double>{pack.charging_knee}, step::Seconds<double>{time});
}

// What a current meets in the mean of a trial.
//   rested, charging   the mean voltages it is driven from, or against; the same unless the pack
//                      rises when charged
//   arriving           of a current at the terminals, what comes to the wells
//   added              that charging adds to the resistance at the start
//   resistance         of the whole trial, with what the voltage moves within it. (13)
struct MeanOfTrial {
    MeanVoltage rested;
    MeanVoltage charging;
    double arriving = 1.0;
    bool rising = false;
    step::Added<double> added{};
    double resistance = 0.0;
};

template <class Demand>
[[nodiscard, gnu::always_inline]] inline MeanOfTrial mean_of_trial(const Prepared& pack,
                                                                   const WellState& state,
                                                                   Demand demand,
                                                                   const Decay& decayed,
                                                                   double time) {
    MeanOfTrial of{.rested = mean_voltage(pack, state, decayed, time)};
    of.arriving = demand.amount < 0.0 ? coulombic(pack, state) : 1.0;
    of.rising = rises(pack, demand);
    of.charging = of.rested;
    if (of.rising) of.added = added_at(pack, state.removed);
    if (of.rising && pack.stands_above)
        of.charging = mean_voltage(charging_on(pack.open_circuit->piece(state.available_piece)),
                                   pack, state, decayed, time);
    of.resistance = step::resistance_of_step(step::Ohms<double>{pack.resistance}, of.arriving,
                                             step::Ohms<double>{of.charging.per_ampere})
                        .value;
    return of;
}

// The current of a trial, and by how much what it charges against lags behind. (63a)
struct TrialCurrent {
    Drawn drawn;
    step::Volts<double> lag{};
};

template <class Demand>
[[nodiscard, gnu::always_inline]] inline TrialCurrent current_of_trial(const Prepared& pack,
                                                                       Demand demand,
                                                                       const MeanOfTrial& of,
                                                                       double time) {
    if (!of.rising) return {.drawn = drawn(pack, demand, of.rested.at_rest, of.resistance)};
    Charged source = charged(pack, of.charging.at_rest, of.resistance, of.added);
    TrialCurrent flows{.drawn = drawn(pack, demand, source)};
    if (pack.resists) {
        flows.lag = lag_at(pack, flows.drawn.current, of.arriving, of.added, time);
        flows.drawn = lagging(pack, demand, flows.drawn, source, flows.lag);
    }
    if (pack.stands_above) {
        source.taking = step::higher(source.taking, flows.lag);
        flows.drawn.current = not_past_absorption(pack, flows.drawn.current, source,
                                                  of.arriving * of.charging.per_ampere);
    }
    return flows;
}

// Where the current of the trial leads the wells.
[[gnu::always_inline]] inline void lead_wells(Trial& trial, const Prepared& pack,
                                              const WellState& state) {
    const auto to = step::stand_after<of_any_kind, double>(
        standing(state), {trial.into}, constants_of(pack), step::Seconds<double>{trial.time},
        trial.decayed.left, trial.decayed.once);
    trial.removed = to.removed.value;
    trial.head = to.head.value;
    trial.available = to.available;
    trial.bound = to.bound;
}

// How far charging stands above the rested voltage, and how far that moves within the trial.
template <class Demand>
[[gnu::always_inline]] inline void rise_above(Trial& trial, const Prepared& pack, Demand demand,
                                              const MeanOfTrial& of, const TrialCurrent& flows) {
    if (pack.resists)
        trial.drift = std::max(
            2.0 * flows.lag.value,
            step::charging_drift(of.added.up_to_knee, added_at(pack, trial.removed).up_to_knee,
                                 step::Amperes<double>{-trial.current})
                .value);
    const double free = flows.drawn.free;
    if (free < 0.0 && trial.current == free)  // all that is offered, and no hair more
        trial.rise =
            demand.amount / trial.current - trial.mean_rested + trial.current * pack.resistance;
    else
        trial.rise = risen(pack, trial.current, of.added) + flows.lag.value +
                     ((of.charging.at_rest - of.rested.at_rest) -
                      (of.charging.per_ampere - of.rested.per_ampere) * trial.into);
}

template <class Demand>
[[nodiscard, gnu::always_inline]] inline Trial try_for(const Prepared& pack, const WellState& state,
                                                       Demand demand, double time) {
    Trial trial{.time = time, .decayed = decay(pack.rate * time)};
    const MeanOfTrial of = mean_of_trial(pack, state, demand, trial.decayed, time);
    const TrialCurrent flows = current_of_trial(pack, demand, of, time);
    trial.possible = flows.drawn.possible;
    trial.root = flows.drawn.root;
    trial.at_rest = of.rested.at_rest;
    trial.current = flows.drawn.current;
    trial.into = of.arriving * flows.drawn.current;
    trial.mean_rested = step::mean_rested(step::Volts<double>{of.rested.at_rest},
                                          step::Ohms<double>{of.rested.per_ampere},
                                          step::Amperes<double>{trial.into})
                            .value;
    lead_wells(trial, pack, state);
    if (of.rising) rise_above(trial, pack, demand, of, flows);
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
    const step::Volts<double> rise{trial.rise};
    const step::Joules<double> energy =
        step::at_far_end(charge, rested + rise, current, resistance);
    flow.in_resistance += step::in_resistance(charge, current, resistance).value;
    flow.between_wells += lost_between_wells(pack, state, trial);
    if (charge.value < 0.0) {
        flow.accepted -= energy.value;
        flow.charge_in -= charge.value;
        flow.in_charging += step::in_charging(into, current, time, rested).value;
        flow.in_charging += step::in_charging_rise(-charge, rise).value;
    } else {
        flow.delivered += energy.value;
        flow.charge_out += charge.value;
    }
}

}  // namespace battery
