// Moves one pack on in time at a constant power (or current) until the time is over or a threshold
// is met. A bank of n alike packs is one of them at an n-th of the power.
#pragma once

#include "battery/levels.hpp"
#include "battery/prepared.hpp"
#include "battery/substep.hpp"
#include "units/quantities.hpp"

namespace battery {

// Where the energy went, each at least zero. With U for stored_energy, and nothing left out:
//   U at start - U at end = delivered - accepted + in_resistance + between_wells + in_charging
//   delivered, accepted   out of and into the far end of the path
//   unaccepted            offered there and refused: by a limit, by a full pack, by the cold
struct EnergyFlow {
    units::Energy delivered{};
    units::Energy accepted{};
    units::Energy unaccepted{};
    units::Energy in_resistance{};
    units::Energy between_wells{};
    units::Energy in_charging{};  // charge that did not arrive in the wells, at the rested voltage
};

//   ending        what was met first; the state is then at the threshold or a hair beyond it, so
//                 that asking again for the same ends at once
//   time          used, at most what was asked for
//   voltage       at the far end of the path, at the end; the current likewise, positive out
//   largest       greatest current of the time as a magnitude
//   at_most       for cannot_be_delivered: the largest power there is at the end state
struct Advanced {
    Wells wells;
    units::Duration time{};
    Ending ending = Ending::completed;
    EnergyFlow energy;
    units::Charge charge_out{};  // at the terminals
    units::Charge charge_in{};
    units::Voltage voltage{};
    units::Current current{};
    units::Current largest{};
    units::Power at_most{};
};

// Voltage and current at this moment at the far end of the path.
//   possible  false when the power cannot be had: then it is the point of the largest power
struct OperatingPoint {
    units::Voltage voltage{};
    units::Current current{};
    bool possible = true;
};

namespace advance_detail {

// What the loop over substeps keeps.
struct Course {
    WellState state;
    double time = 0.0;
    double lowest = 0.0;  // rested voltage of the available well
    double taken = 0.0;   // largest mean charging current, of a pack that charging rises
    Flow flow = {};
    Ending ending = Ending::completed;
    int substeps = 0;  // of the general case
};

// The general case: splits at knots, turns, tolerance and thresholds.
template <class Demand>
void run_in_substeps(const Prepared& pack, Demand demand, double time, Course& course);
extern template void run_in_substeps(const Prepared&, AtPower, double, Course&);
extern template void run_in_substeps(const Prepared&, AtCurrent, double, Course&);

// Current while the available well is kept full: what seeps on into the bound one. (9)
[[nodiscard, gnu::always_inline]] inline double seeping(const Prepared& pack, double head) {
    return std::min(0.0, pack.exchange * head);
}

using step::brim;

// Of a pack at this moment: what is offered it, were its available well never full.
template <class Demand>
[[nodiscard, gnu::always_inline]] inline Drawn offered_now(const Prepared& pack, Demand demand,
                                                           const WellState& state, double rested) {
    if (!rises(pack, demand)) return drawn(pack, demand, rested, pack.resistance);
    return drawn(pack, demand,
                 charged(pack, charging_voltage(pack, state), pack.resistance,
                         added_at(pack, state.removed)));
}

//   voltage  at the far end of the path
struct Now {
    double current = 0.0;
    double voltage = 0.0;
    bool possible = true;
};

// A full pack that is offered more than it takes shows what it would show if it took it. (64)
template <class Demand>
[[nodiscard, gnu::always_inline]] inline Now now_at(const Prepared& pack, Demand demand,
                                                    const WellState& state, double rested) {
    const Drawn offered = offered_now(pack, demand, state, rested);
    Now now{.current = offered.current, .possible = offered.possible};
    if (now.current < 0.0 && state.available >= brim)
        now.current = std::max(now.current, seeping(pack, state.head) / coulombic(pack, state));
    now.voltage = rested - now.current * pack.resistance;
    if (!rises(pack, demand) || pack.charge_floor == 0.0) return now;
    const double alone = charging_voltage(pack, state);
    if (!(offered.current < 0.0))
        now.voltage = std::clamp(pack.absorption, rested, std::max(rested, alone));
    else
        now.voltage = alone - offered.current * pack.resistance +
                      risen(pack, offered.current, added_at(pack, state.removed));
    return now;
}

inline constexpr double slack = step::hair;

[[nodiscard, gnu::always_inline]] inline bool on_piece(const Piece& piece, double fill) {
    return fill >= piece.low - slack && fill <= piece.high + slack;
}

// Whether the one trial for the whole time met nothing on its way.
template <class Demand>
[[nodiscard, gnu::always_inline]] inline bool undisturbed(const Prepared& pack, Demand demand,
                                                          const WellState& state,
                                                          const Trial& trial, double rested_before,
                                                          double rested_after) {
    const Piece& piece = pack.open_circuit->piece(state.available_piece);
    const bool charges = demand.amount < 0.0;
    const double steeper =
        charges ? std::abs(piece.steeper * (trial.available - state.available)) : 0.0;
    const double change = std::abs(rested_after - rested_before) + steeper;
    const Piece& beneath = pack.open_circuit->piece(state.bound_piece);
    const bool limits_charge =
        trial.into > 0.0
            ? trial.removed < pack.removed_above && state.removed < pack.removed_above
            : trial.removed > next_charging_piece(pack, state) &&
                  trial.removed > pack.removed_below && state.removed > pack.removed_below &&
                  (trial.removed > pack.filled_to || state.removed <= pack.filled_to);
    const step::Ends<double> ends{piece.low - slack, piece.high + slack, beneath.low - slack,
                                  beneath.high + slack};
    return trial.possible && limits_charge &&
           step::stays<of_any_kind, double>(
               true, standing(state), {{trial.removed}, {trial.head}, trial.available, trial.bound},
               {trial.into}, constants_of(pack), ends, {change}, {trial.at_rest},
               {tolerance_on(pack, piece, charges)}, {trial.root}) &&
           trial.drift <= pack.drift_tolerance &&
           far_from_levels(pack, demand, std::min(rested_before, rested_after),
                           std::max(rested_before, rested_after), trial.current,
                           trial.rise + 0.5 * trial.drift + steeper);
}

template <class Demand>
[[nodiscard, gnu::always_inline]] inline Course course_of(const Prepared& pack, Demand demand,
                                                          const WellState& state, double time) {
    Course course{.state = state};
    const double before = rested_voltage(pack, state);
    course.lowest = before;
    const Trial trial = try_for(pack, state, demand, time);
    const Piece& piece = pack.open_circuit->piece(state.available_piece);
    const double after_it = piece.at_zero + piece.slope * trial.available;
    if (!undisturbed(pack, demand, state, trial, before, after_it)) [[unlikely]] {
        run_in_substeps(pack, demand, time, course);
        return course;
    }
    add(course.flow, pack, state, trial);
    course.time = time;
    course.lowest = std::min(before, after_it);
    if (rises(pack, demand)) course.taken = -trial.current;
    course.state.removed = trial.removed;
    course.state.head = trial.head;
    course.state.available = trial.available;
    course.state.bound = trial.bound;
    return course;
}

[[nodiscard, gnu::always_inline]] inline double unaccepted(AtPower demand, const Course& course) {
    return demand.amount < 0.0 ? std::max(0.0, -demand.amount * course.time - course.flow.accepted)
                               : 0.0;
}
// What a current source refuses is no energy anybody offered.
[[nodiscard, gnu::always_inline]] inline double unaccepted(AtCurrent, const Course&) {
    return 0.0;
}

// Where no voltage gives the power: the point of the largest.
[[nodiscard, gnu::always_inline]] inline Now greatest(const Prepared& pack, double rested) {
    const double current = 0.5 * rested / pack.resistance;
    return {.current = current, .voltage = rested - current * pack.resistance, .possible = false};
}

template <class Demand>
[[nodiscard, gnu::always_inline]] inline Advanced reported(const Prepared& pack, Demand demand,
                                                           const Course& course) {
    using namespace units;
    const double rested = rested_voltage(pack, course.state);
    Now at_end = now_at(pack, demand, course.state, rested);
    if (!at_end.possible) at_end = greatest(pack, rested);
    const double current = at_end.current;
    double largest = std::max(std::abs(current), course.taken);
    if (course.lowest < rested && !rises(pack, demand))
        largest = std::max(largest,
                           std::abs(drawn(pack, demand, course.lowest, pack.resistance).current));
    Advanced result{.wells = {.removed = course.state.removed * coulomb,
                              .head_difference = course.state.head * coulomb},
                    .time = course.time * second,
                    .ending = course.ending,
                    .energy = {.delivered = course.flow.delivered * joule,
                               .accepted = course.flow.accepted * joule,
                               .unaccepted = unaccepted(demand, course) * joule,
                               .in_resistance = course.flow.in_resistance * joule,
                               .between_wells = course.flow.between_wells * joule,
                               .in_charging = course.flow.in_charging * joule},
                    .charge_out = course.flow.charge_out * coulomb,
                    .charge_in = course.flow.charge_in * coulomb,
                    .voltage = at_end.voltage * volt,
                    .current = current * ampere,
                    .largest = largest * ampere};
    if (course.ending == Ending::cannot_be_delivered)
        result.at_most = rested * rested / (4.0 * pack.resistance) * watt;
    return result;
}

template <class Demand>
[[nodiscard, gnu::always_inline]] inline Advanced advance(const Prepared& pack, const Wells& wells,
                                                          Demand demand, double time) {
    const WellState state =
        state_of(pack, wells.removed / units::coulomb, wells.head_difference / units::coulomb);
    return reported(pack, demand, course_of(pack, demand, state, time));
}

}  // namespace advance_detail

//   power     at the far end of the path: positive is taken from the pack, negative offered to it
//   time      not negative
//   holds for any power and any time; method.md, "Accuracy"
[[nodiscard, gnu::always_inline]] inline Advanced advance(const Prepared& pack, const Wells& wells,
                                                          units::Power power,
                                                          units::Duration time) {
    return advance_detail::advance(pack, wells, AtPower{power / units::watt}, time / units::second);
}

// The same at a constant current, the way makers measure capacity.
[[nodiscard, gnu::always_inline]] inline Advanced advance(const Prepared& pack, const Wells& wells,
                                                          units::Current current,
                                                          units::Duration time) {
    return advance_detail::advance(pack, wells, AtCurrent{current / units::ampere},
                                   time / units::second);
}

[[nodiscard]] OperatingPoint operating_point(const Prepared& pack, const Wells& wells,
                                             units::Power power);

// The largest power the pack can give at its far end at this moment; nothing when it has no
// resistance to limit it.
[[nodiscard]] std::optional<units::Power> largest_power(const Prepared& pack, const Wells& wells);

}  // namespace battery
