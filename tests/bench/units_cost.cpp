// The charge step on quantities, and the step of the clock over dimensions, each beside the same
// arithmetic on plain doubles, for callgrind to count (units_cost.sh). Both must also give the same
// bits.
#include <algorithm>
#include <cmath>
#include <cstdio>
#include <cstring>

#include "battery/cell/chemistry.hpp"
#include "battery/cell/two_well.hpp"
#include "battery/substep.hpp"

namespace {

using namespace units;

constexpr int steps = 200'000;

// The same lines as battery::after, with every unit struck out.
struct PlainWells {
    double removed;
    double head_difference;
};

struct PlainKinetics {
    double total;
    double available;
    double rate;
};

inline PlainWells plain_after(const PlainKinetics& kinetics, PlainWells wells, double current,
                              double time) {
    const battery::Decay heads = battery::decay(kinetics.rate * time);
    const double head_gain = kinetics.available < 1.0 ? 1.0 / kinetics.available : 0.0;
    return {wells.removed + current * time,
            wells.head_difference * heads.left + current * time * (head_gain * heads.once)};
}

// The same lines as battery::try_for, with every unit struck out, as far as the wells depend on
// them.
struct PlainAdded {
    double up_to_knee = 0.0;
    double beyond = 0.0;
    double slope = 0.0;
    double slope_beyond = 0.0;
};

[[gnu::always_inline]] inline PlainAdded plain_added(const battery::Prepared& pack,
                                                     double removed) {
    if (!pack.resists) return {};
    double charge = 1.0 - removed * pack.per_rated;
    charge = charge < 0.0 ? 0.0 : charge;
    charge = charge > 1.0 ? 1.0 : charge;
    const double per_short = 1.0 / (1.001 - charge);
    const double all = pack.charging_empty * (1.0 + pack.charging_rise * charge * per_short);
    const double slope = 1.001 * pack.charging_rise * per_short * per_short * pack.charging_empty;
    const double more = all - pack.inner;
    const double more_beyond = all * pack.charging_beyond - pack.inner;
    return {more > 0.0 ? more : 0.0, more_beyond > 0.0 ? more_beyond : 0.0,
            more > 0.0 ? slope : 0.0, more_beyond > 0.0 ? slope * pack.charging_beyond : 0.0};
}

[[gnu::always_inline]] inline double plain_limited(const battery::Prepared& pack, double free,
                                                   double voltage, double resistance) {
    const double over = (voltage - pack.absorption) / resistance;
    const double held = voltage >= pack.absorption ? 0.0 : over;
    const double lowest = pack.charge_floor < held ? held : pack.charge_floor;
    return free < lowest ? lowest : free;
}

[[gnu::always_inline]] inline double plain_drawn(const battery::Prepared& pack, double power,
                                                 double voltage, double resistance) {
    const double under_root = voltage * voltage - 4.0 * resistance * power;
    if (!(under_root >= 0.0)) return 0.0;
    const double current = 2.0 * power / (voltage + std::sqrt(under_root));
    return current < 0.0 ? plain_limited(pack, current, voltage, resistance) : current;
}

// What stands against a charge, and the current that a power makes of it.
struct PlainTaking {
    double voltage;
    double up_to_knee;
    double at_knee;
    double from_beyond;
    double beyond;
};

[[gnu::always_inline]] inline PlainTaking plain_taking(const battery::Prepared& pack,
                                                       double voltage, double resistance,
                                                       const PlainAdded& added) {
    const double up_to_knee = resistance + added.up_to_knee;
    const double beyond = resistance + added.beyond;
    const double at_knee = voltage + up_to_knee * pack.charging_knee;
    return {voltage, up_to_knee, at_knee, at_knee - beyond * pack.charging_knee, beyond};
}

struct PlainTaken {
    double current;
    double root;
    double free;
};
[[gnu::always_inline]] inline PlainTaken plain_taken(const battery::Prepared& pack, double power,
                                                     const PlainTaking& taking) {
    const auto [voltage, up_to_knee, at_knee, from_beyond, beyond] = taking;
    const bool fast = -power > at_knee * pack.charging_knee;
    const double of_power = fast ? from_beyond : voltage;
    const double meets = fast ? beyond : up_to_knee;
    const double root = std::sqrt(of_power * of_power - 4.0 * meets * power);
    const double free = 2.0 * power / (of_power + root);
    const bool held_fast = at_knee < pack.absorption;
    return {plain_limited(pack, free, held_fast ? from_beyond : voltage,
                          held_fast ? beyond : up_to_knee),
            root, free};
}
[[gnu::always_inline]] inline double plain_lagging(const battery::Prepared& pack,
                                                   const PlainTaken& first,
                                                   const PlainTaking& taking, double lag) {
    const bool held_fast = taking.at_knee < pack.absorption;
    return plain_limited(pack, first.free * (first.root / (first.root + lag)),
                         (held_fast ? taking.from_beyond : taking.voltage) + lag,
                         held_fast ? taking.beyond : taking.up_to_knee);
}

// By how much more is met in the mean of a step than at its start.
[[gnu::always_inline]] inline double plain_lag(const battery::Prepared& pack, double current,
                                               double arriving, const PlainAdded& added,
                                               double time) {
    const double half = -0.5 * (arriving * current) * pack.per_rated * time;
    const double over = -current - pack.charging_knee;
    const double beyond = over > 0.0 ? over : 0.0;
    return added.slope * half * (-current - beyond) + added.slope_beyond * half * beyond;
}

[[gnu::always_inline]] inline double plain_charged(const battery::Prepared& pack, double power,
                                                   double voltage, double resistance,
                                                   double arriving, double removed, double time) {
    if (!pack.resists) return plain_drawn(pack, power, voltage, resistance);
    const PlainAdded added = plain_added(pack, removed);
    const PlainTaking taking = plain_taking(pack, voltage, resistance, added);
    const PlainTaken first = plain_taken(pack, power, taking);
    return plain_lagging(pack, first, taking,
                         plain_lag(pack, first.current, arriving, added, time));
}

[[gnu::always_inline]] inline PlainWells plain_step(const battery::Prepared& pack,
                                                    const battery::WellState& state,
                                                    PlainWells wells, double power, double time) {
    const battery::Decay decayed = battery::decay(pack.rate * time);
    const battery::Piece& piece = pack.open_circuit->piece(state.available_piece);
    const double mean_fill =
        1.0 - (wells.removed + pack.bound * wells.head_difference * decayed.once) * pack.per_total;
    const double fill_per_ampere = time * (0.5 + pack.bound_gain * decayed.twice) * pack.per_total;
    const double at_rest = piece.at_zero + piece.slope * mean_fill;
    const double per_ampere = piece.slope * fill_per_ampere;
    const double arriving = power < 0.0 ? pack.coulombic[state.charging_piece] : 1.0;
    const bool rising = power < 0.0 && (pack.resists || pack.stands_above);
    double charging_at_rest = at_rest;
    double charging_per_ampere = per_ampere;
    if (rising && pack.stands_above) {
        charging_at_rest =
            piece.at_zero + piece.above_at_zero + (piece.slope + piece.steeper) * mean_fill;
        charging_per_ampere = (piece.slope + piece.steeper) * fill_per_ampere;
    }
    const double resistance = pack.resistance + arriving * charging_per_ampere;
    const double current = rising ? plain_charged(pack, power, charging_at_rest, resistance,
                                                  arriving, wells.removed, time)
                                  : plain_drawn(pack, power, at_rest, resistance);
    const double into = arriving * current;
    return {wells.removed + into * time,
            wells.head_difference * decayed.left + into * pack.head_gain * time * decayed.once};
}

// The step's length changes, so that nothing can be lifted out of the loop.
double seconds_of(int step) {
    return 30.0 + static_cast<double>(step % 97) * 11.0;
}

[[gnu::always_inline]] inline void steps_on_dimensions(const battery::Prepared& pack,
                                                       PlainWells& end) {
    battery::WellState state = battery::state_of(pack, 200000.0, 0.0);
    for (int step = 0; step < steps; ++step) {
        const auto trial = battery::try_for(
            pack, state, battery::AtPower{step % 2 == 0 ? 70.0 : -65.0}, seconds_of(step));
        state.removed = trial.removed;
        state.head = trial.head;
    }
    end = {state.removed, state.head};
}

[[gnu::always_inline]] inline void steps_on_doubles(const battery::Prepared& pack,
                                                    PlainWells& end) {
    const battery::WellState state = battery::state_of(pack, 200000.0, 0.0);
    PlainWells wells{200000.0, 0.0};
    for (int step = 0; step < steps; ++step)
        wells = plain_step(pack, state, wells, step % 2 == 0 ? 70.0 : -65.0, seconds_of(step));
    end = wells;
}

}  // namespace

extern "C" {

__attribute__((noinline)) void charge_steps_on_quantities(const battery::Kinetics& given,
                                                          battery::Wells& end) {
    const battery::Kinetics kinetics = given;
    battery::Wells wells;
    for (int step = 0; step < steps; ++step) {
        const Current current = (step % 2 == 0 ? 7.0 : -6.5) * ampere;
        wells = battery::after(kinetics, wells, current, seconds_of(step) * second);
    }
    end = wells;
}

__attribute__((noinline)) void charge_steps_on_doubles(const PlainKinetics& given,
                                                       PlainWells& end) {
    const PlainKinetics kinetics = given;
    PlainWells wells{0.0, 0.0};
    for (int step = 0; step < steps; ++step) {
        const double current = step % 2 == 0 ? 7.0 : -6.5;
        wells = plain_after(kinetics, wells, current, seconds_of(step));
    }
    end = wells;
}

__attribute__((noinline)) void clock_steps_on_dimensions(const battery::Prepared& pack,
                                                         PlainWells& end) {
    steps_on_dimensions(pack, end);
}
__attribute__((noinline)) void clock_steps_on_doubles(const battery::Prepared& pack,
                                                      PlainWells& end) {
    steps_on_doubles(pack, end);
}

__attribute__((noinline)) void rising_steps_on_dimensions(const battery::Prepared& pack,
                                                          PlainWells& end) {
    steps_on_dimensions(pack, end);
}
__attribute__((noinline)) void rising_steps_on_doubles(const battery::Prepared& pack,
                                                       PlainWells& end) {
    steps_on_doubles(pack, end);
}
}

int main() {
    const battery::Kinetics kinetics{
        .total = 113.0 * ampere_hour, .available = Share(0.345), .rate = 1.02 * per_hour};
    battery::Wells wells;
    PlainWells plain{0.0, 0.0};
    charge_steps_on_quantities(kinetics, wells);
    charge_steps_on_doubles({113.0 * 3600.0, 0.345, 1.02 * (per_hour / hertz)}, plain);
    const double on_quantities[] = {wells.removed / coulomb, wells.head_difference / coulomb};
    const double on_doubles[] = {plain.removed, plain.head_difference};
    const bool same = std::memcmp(on_quantities, on_doubles, sizeof on_doubles) == 0;
    // Of packs that meet the inner resistance alone, and of packs with a resistance of charging.
    const battery::ChargingResistance none{};
    const battery::ChargingResistance rises{.when_empty = 0.012 * ohm,
                                            .rise = 0.05,
                                            .rated = 113.0 * ampere_hour,
                                            .knee = 4.0 * ampere,
                                            .beyond = 0.4};
    bool same_step = true;
    for (const auto& charging : {none, rises}) {
        const battery::Prepared pack =
            battery::prepare({.kinetics = kinetics,
                              .open_circuit = &battery::open_circuit_of(scenario::Chemistry::agm),
                              .inner = 0.0066 * ohm,
                              .path = 0.002 * ohm,
                              .charging = {.largest = 30.0 * ampere,
                                           .absorption = 14.4 * volt,
                                           .coulombic = Efficiency(0.9),
                                           .resistance = charging}});
        PlainWells by_dimensions{};
        PlainWells by_doubles{};
        if (pack.resists) {
            rising_steps_on_dimensions(pack, by_dimensions);
            rising_steps_on_doubles(pack, by_doubles);
        } else {
            clock_steps_on_dimensions(pack, by_dimensions);
            clock_steps_on_doubles(pack, by_doubles);
        }
        same_step = same_step && std::memcmp(&by_dimensions, &by_doubles, sizeof by_doubles) == 0;
    }
    std::printf("same bits: %s, of the clock's step: %s\n", same ? "yes" : "no",
                same_step ? "yes" : "no");
    return same && same_step ? 0 : 1;
}
