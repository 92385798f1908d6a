#include "battery/prepared.hpp"

#include <algorithm>
#include <cassert>
#include <cmath>
#include <limits>

#include "battery/with_cut_off.hpp"

namespace battery {

using namespace units;

namespace {

constexpr double without_limit = std::numeric_limits<double>::infinity();

double lowest_current(const Charging& charging) {
    if (!charging.allowed) return 0.0;
    return charging.largest ? -(*charging.largest).value() : -without_limit;
}

// method.md (25). A current limit beyond half the full voltage over the resistance is never met:
// the power cannot be delivered before.
void add_glance(Prepared& pack) {
    pack.near_voltage = std::max(pack.cut_off, pack.pack_cut_off);
    pack.near_per_watt = pack.near_voltage > 0.0 ? pack.resistance / pack.near_voltage : 0.0;
    const double drop = pack.resistance * pack.current_above;
    const double full = pack.open_circuit->voltage(StateOfCharge(1.0)) / volt;
    if (std::isfinite(pack.current_above) && drop <= 0.5 * full) {
        pack.limit_voltage = drop;
        pack.limit_per_watt = 1.0 / pack.current_above;
    }
}

void add_efficiency(Prepared& pack, const ChargeEfficiency& efficiency) {
    const int last = efficiency.pieces() - 1;
    for (int piece = 0; piece <= last; ++piece) {
        assert(efficiency.of_piece(piece) > Efficiency(0.0) &&
               efficiency.of_piece(piece) <= Efficiency(1.0));
        pack.coulombic[piece] = efficiency.of_piece(piece).value();
        pack.coulombic_edge[piece + 1] =
            piece < last ? efficiency.end_of_piece(piece).complement().value() * pack.total
                         : -without_limit;
    }
}

void add_resistance(Prepared& pack, const ChargingResistance& resistance) {
    pack.resists = resistance.when_empty > Resistance{};
    if (!pack.resists) return;
    assert(resistance.rated > Charge{} && resistance.rise >= 0.0);
    assert(resistance.knee > Current{} && std::isfinite(resistance.knee.value()));
    assert(resistance.beyond > 0.0 && resistance.beyond <= 1.0);
    pack.charging_empty = resistance.when_empty / ohm;
    pack.charging_rise = resistance.rise;
    pack.per_rated = 1.0 / (resistance.rated / coulomb);
    pack.charging_knee = resistance.knee / ampere;
    pack.charging_beyond = resistance.beyond;
}

void add_stops(Prepared& pack, const Stops& stops) {
    pack.cut_off = stops.cut_off.value_or(Voltage{}) / volt;
    pack.pack_cut_off = stops.pack_cut_off.value_or(Voltage{}) / volt;
    pack.current_above = stops.current_above.value_or(without_limit * ampere) / ampere;
    pack.removed_above = stops.removed_above.value_or(without_limit * coulomb) / coulomb;
    pack.voltage_above = stops.voltage_above.value_or(without_limit * volt) / volt;
    pack.removed_below = stops.removed_below.value_or(-without_limit * coulomb) / coulomb;
    pack.filled_to = stops.filled_to.value_or(-without_limit * coulomb) / coulomb;
}

// Another tolerance than the usual one makes the others in proportion.
void add_tolerances(Prepared& pack, Voltage tolerance) {
    pack.tolerance = tolerance / volt;
    pack.fill_tolerance = default_fill_tolerance * (tolerance / default_tolerance);
    pack.drift_tolerance = step::charging_change * (tolerance / default_tolerance);
}

void assert_can_be(const Arrangement& arrangement) {
    [[maybe_unused]] const Kinetics& kinetics = arrangement.kinetics;
    assert(arrangement.open_circuit != nullptr);
    assert(kinetics.total > Charge{} && kinetics.rate >= Frequency{});
    assert(kinetics.available > Share(0.0) && kinetics.available <= Share(1.0));
    assert(arrangement.inner >= Resistance{} && arrangement.path >= Resistance{});
    assert(arrangement.reachable > Share(0.0) && arrangement.reachable <= Share(1.0));
}

}  // namespace

Prepared prepare(const Arrangement& arrangement, Voltage tolerance) {
    assert_can_be(arrangement);
    assert(tolerance > Voltage{});
    const Kinetics& kinetics = arrangement.kinetics;
    const double width = kinetics.available.value();
    const double head_gain = two_well_detail::head_gain(kinetics);
    const bool by_rate = arrangement.locked.by_rate();
    const StateOfCharge empty(by_rate ? arrangement.locked.most()
                                      : arrangement.reachable.complement().value());
    Prepared result{
        .open_circuit = arrangement.open_circuit,
        .total = kinetics.total / coulomb,
        .per_total = 1.0 / (kinetics.total / coulomb),
        .width = width,
        .bound = 1.0 - width,
        .head_gain = head_gain,
        .bound_gain = (1.0 - width) * head_gain,
        .rate = kinetics.rate / hertz,
        .exchange = kinetics.rate / hertz * width * (1.0 - width),
        .inner = arrangement.inner / ohm,
        .path = arrangement.path / ohm,
        .resistance = (arrangement.inner + arrangement.path) / ohm,
        .charge_floor = lowest_current(arrangement.charging),
        .absorption = arrangement.charging.absorption.value_or(without_limit * volt) / volt,
        .empty_voltage = arrangement.open_circuit->voltage(empty) / volt,
        .locked = arrangement.locked,
        .locks_by_rate = by_rate};
    add_stops(result, arrangement.stops);
    add_tolerances(result, tolerance);
    const StateOfCharge as_rested = arrangement.open_circuit->charges_as_rested_to();
    result.stands_above = as_rested < StateOfCharge(1.0);
    if (result.stands_above) result.as_rested_to = as_rested.value();
    add_resistance(result, arrangement.charging.resistance);
    add_efficiency(result, arrangement.charging.coulombic);
    add_glance(result);
    return result;
}

void set_cut_off(Prepared& pack, Voltage cut_off) {
    pack.cut_off = cut_off / volt;
    add_glance(pack);
}

}  // namespace battery
