// What holds for every pack, every demand and every time. Cases are drawn from wide ranges: all
// chemistries' voltages, widths down to 5 %, powers from microwatts to kilowatts, up to 60 days.
#include <algorithm>
#include <cmath>
#include <random>
#include <vector>

#include <fmt/format.h>

#include "battery/advance.hpp"
#include "battery/cell/chemistry.hpp"

namespace {

using namespace battery;
using namespace units;

constexpr int cases = 10000;

struct Case {
    Arrangement arrangement;
    Wells wells = {};
    Power power{};
    Duration time{};
};

class Cases {
  public:
    explicit Cases(std::uint64_t seed = 20260114) : bits_(seed) {}
    double between(double low, double high) {
        return std::uniform_real_distribution<double>(low, high)(bits_);
    }
    double spread(double low, double high) {
        return std::exp(between(std::log(low), std::log(high)));
    }
    bool one_in(int n) { return std::uniform_int_distribution<int>(1, n)(bits_) == 1; }

    // One number, the law of lead-acid, or falling or rising as it comes in up to eight pieces.
    ChargeEfficiency efficiency(const Kinetics& kinetics) {
        if (one_in(3)) return Efficiency(between(0.7, 1.0));
        if (one_in(3)) return lead_acid_efficiency(kinetics, kinetics.total);
        std::vector<double> ends;
        const int pieces = std::uniform_int_distribution<int>(1, 8)(bits_);
        for (int edge = 1; edge < pieces; ++edge)
            ends.push_back(one_in(2) ? between(0.9, 1.0) : between(0.001, 1.0));
        std::ranges::sort(ends);
        std::vector<StateOfCharge> edges;
        for (const double end : ends)
            edges.push_back(StateOfCharge(end));
        std::vector<Efficiency> values;
        for (int piece = 0; piece < pieces; ++piece)
            values.push_back(Efficiency(between(0.2, 1.0)));
        return ChargeEfficiency(edges, values);
    }
    // Any, down to one that is all but a step at full charge or a corner at its knee. From bits of
    // its own: the other cases stay what they were.
    ChargingResistance resistance(const Arrangement& of) {
        Cases apart(resisting_);
        const double hours = of.kinetics.total / ampere_hour;
        ChargingResistance made{.when_empty = apart.spread(0.01, 20.0) / hours * ohm,
                                .rise = apart.one_in(4) ? 0.0 : apart.spread(0.001, 3.0),
                                .rated = apart.between(0.5, 1.0) * of.kinetics.total,
                                .knee = apart.spread(0.001, 1.0) * hours * ampere,
                                .beyond = apart.between(0.01, 1.0)};
        if (apart.one_in(2)) made = {};
        resisting_ = apart.bits_();
        return made;
    }
    Arrangement arrangement() {
        constexpr scenario::Chemistry all[] = {scenario::Chemistry::flooded,
                                               scenario::Chemistry::agm, scenario::Chemistry::gel,
                                               scenario::Chemistry::lifepo4};
        const auto chemistry = all[std::uniform_int_distribution<int>(0, 3)(bits_)];
        Arrangement arrangement{
            .kinetics = {.total = spread(5.0, 800.0) * ampere_hour,
                         .available = Share(one_in(4) ? 1.0 : between(0.05, 0.999)),
                         .rate = one_in(10) ? Frequency{} : spread(0.02, 20.0) * per_hour},
            .open_circuit = &open_circuit_of(chemistry),
            .inner = one_in(8) ? Resistance{} : spread(1e-4, 0.1) * ohm,
            .path = one_in(4) ? Resistance{} : spread(1e-4, 0.05) * ohm,
            .reachable = Share(one_in(2) ? 1.0 : between(0.3, 1.0)),
            .charging = {.allowed = !one_in(10)}};
        arrangement.charging.coulombic = efficiency(arrangement.kinetics);
        arrangement.charging.resistance = resistance(arrangement);
        if (one_in(2)) arrangement.charging.largest = spread(0.5, 100.0) * ampere;
        if (one_in(2)) arrangement.charging.absorption = between(12.0, 15.0) * volt;
        return arrangement;
    }
    Stops stops(const Arrangement& arrangement) {
        Stops stops;
        if (one_in(3)) stops.cut_off = between(8.0, 12.8) * volt;
        if (one_in(5)) stops.pack_cut_off = between(8.0, 12.5) * volt;
        if (one_in(5)) stops.current_above = spread(1.0, 300.0) * ampere;
        if (one_in(5)) stops.removed_above = between(0.0, 1.0) * arrangement.kinetics.total;
        if (one_in(5)) stops.voltage_above = between(11.0, 14.0) * volt;
        if (one_in(5)) stops.removed_below = between(0.0, 1.0) * arrangement.kinetics.total;
        if (one_in(5)) stops.filled_to = between(0.0, 0.05) * arrangement.kinetics.total;
        return stops;
    }
    // A state that some use of the pack leads to: a rested fill, then a short spell of current.
    Wells wells(const Kinetics& kinetics) {
        const Wells start = rested(kinetics, StateOfCharge(between(0.0, 1.0)));
        const Duration spell = spread(1.0, 1e5) * second;
        const Current discharge = largest_discharge(kinetics, start, spell);
        const Current charge = largest_charge(kinetics, start, spell);
        return after(kinetics, start,
                     one_in(2) ? discharge * between(0.0, 1.0) : charge * -between(0.0, 1.0),
                     spell);
    }
    Case next(bool with_stops) {
        Case made{.arrangement = arrangement()};
        if (with_stops) made.arrangement.stops = stops(made.arrangement);
        made.wells = wells(made.arrangement.kinetics);
        const double hours = made.arrangement.kinetics.total / ampere_hour;
        const double size = hours * spread(1e-7, 100.0);  // W
        made.power = (one_in(10) ? 0.0 : one_in(2) ? size : -size) * watt;
        made.time = (one_in(20) ? 60.0 * 86400.0 : spread(1e-3, 60.0 * 86400.0)) * second;
        return made;
    }

  private:
    std::mt19937_64 bits_;
    std::uint64_t resisting_ = 20261128;
};

double balance_error(const Case& one, const Advanced& result) {
    const Energy before =
        stored_energy(one.arrangement.kinetics, *one.arrangement.open_circuit, one.wells);
    const Energy later =
        stored_energy(one.arrangement.kinetics, *one.arrangement.open_circuit, result.wells);
    const EnergyFlow& flow = result.energy;
    const Energy residual = before - later - flow.delivered + flow.accepted - flow.in_resistance -
                            flow.between_wells - flow.in_charging;
    const Energy whole =
        stored_energy(one.arrangement.kinetics, *one.arrangement.open_circuit, Wells{});
    return std::abs(residual / whole);
}

bool finite(const Advanced& result) {
    const EnergyFlow& flow = result.energy;
    for (const double value :
         {result.wells.removed.value(), result.wells.head_difference.value(), result.time.value(),
          flow.delivered.value(), flow.accepted.value(), flow.unaccepted.value(),
          flow.in_resistance.value(), flow.between_wells.value(), flow.in_charging.value(),
          result.charge_out.value(), result.charge_in.value(), result.voltage.value(),
          result.current.value(), result.largest.value(), result.at_most.value()})
        if (!std::isfinite(value)) return false;
    return true;
}

std::string described(const Case& one) {
    const Kinetics& k = one.arrangement.kinetics;
    return fmt::format(
        "C {} Ah c {} k {}/h inner {} path {} reachable {} limit {} absorption {} eta {} r {} Ah "
        "head {} "
        "Ah P {} W t {} s pieces {} full {} charging {} rise {} rated {} knee {} beyond {}",
        k.total / ampere_hour, k.available.value(), k.rate / per_hour, one.arrangement.inner / ohm,
        one.arrangement.path / ohm, one.arrangement.reachable.value(),
        one.arrangement.charging.largest.value_or(Current{}) / ampere,
        one.arrangement.charging.absorption.value_or(Voltage{}) / volt,
        one.arrangement.charging.coulombic.of_piece(0).value(), one.wells.removed / ampere_hour,
        one.wells.head_difference / ampere_hour, one.power / watt, one.time / second,
        one.arrangement.charging.coulombic.pieces(),
        one.arrangement.open_circuit->voltage(StateOfCharge(1.0)) / volt,
        one.arrangement.charging.resistance.when_empty / ohm,
        one.arrangement.charging.resistance.rise,
        one.arrangement.charging.resistance.rated / ampere_hour,
        one.arrangement.charging.resistance.knee / ampere,
        one.arrangement.charging.resistance.beyond);
}

TEST(battery_advance, energy_out_of_the_store_is_all_accounted_for) {
    Cases from;
    double worst = 0.0;
    for (int index = 0; index < cases; ++index) {
        const Case one = from.next(index % 2 == 0);
        const Advanced result = advance(prepare(one.arrangement), one.wells, one.power, one.time);
        ASSERT_TRUE(finite(result)) << described(one);
        const double error = balance_error(one, result);
        worst = std::max(worst, error);
        ASSERT_LT(error, 1e-11) << described(one);
    }
    std::printf("worst unexplained part of the store: %.2e\n", worst);
}

TEST(battery_advance, flows_are_never_negative_and_power_times_time_is_delivered_or_offered) {
    Cases from;
    for (int index = 0; index < cases; ++index) {
        const Case one = from.next(index % 2 == 0);
        const Advanced result = advance(prepare(one.arrangement), one.wells, one.power, one.time);
        const EnergyFlow& flow = result.energy;
        const Energy whole =
            stored_energy(one.arrangement.kinetics, *one.arrangement.open_circuit, Wells{});
        const Energy hair = -1e-12 * whole;
        for (const Energy& part : {flow.delivered, flow.accepted, flow.unaccepted,
                                   flow.in_resistance, flow.between_wells, flow.in_charging})
            ASSERT_GE(part, hair) << described(one);
        const Energy asked = one.power * result.time;
        const Energy given = flow.delivered - flow.accepted - flow.unaccepted;
        ASSERT_NEAR(given / joule, asked / joule, 1e-11 * std::abs(asked / joule) + 1e-12)
            << described(one);
        ASSERT_LE(result.time, one.time);
        ASSERT_TRUE(result.ending != Ending::completed || result.time == one.time);
    }
}

// Charge at the terminals that brings a pack from one removed charge to another: what lies between
// them on each piece of the efficiency, over that efficiency.
Charge needed_at_terminals(const Arrangement& arrangement, Charge from, Charge to) {
    const ChargeEfficiency& efficiency = arrangement.charging.coulombic;
    Charge needed{};
    Charge piece_begins = std::max(from, arrangement.kinetics.total);
    for (int piece = 0; piece < efficiency.pieces(); ++piece) {
        const bool last = piece + 1 == efficiency.pieces();
        const Charge piece_ends = last ? std::min(to, Charge{})
                                       : Charge((1.0 - efficiency.end_of_piece(piece).value()) *
                                                arrangement.kinetics.total);
        const Charge filled = std::min(from, piece_begins) - std::max(to, piece_ends);
        if (filled > Charge{}) needed += filled / efficiency.of_piece(piece).value();
        piece_begins = piece_ends;
    }
    return needed;
}

// At the end of any stretch of charging, and at any moment of it.
TEST(battery_advance, absorption_is_never_passed) {
    Cases from;
    for (int index = 0; index < cases; ++index) {
        const Case one = from.next(false);
        const auto& charging = one.arrangement.charging;
        if (!(one.power < Power{}) || !charging.absorption) continue;
        const Prepared pack = prepare(one.arrangement);
        // a pack that stands higher by itself is not pulled down
        const auto most = [&](const Wells& wells) {
            const StateOfCharge fill = available_fill(one.arrangement.kinetics, wells);
            return std::max(*charging.absorption, one.arrangement.open_circuit->voltage(fill)) +
                   1e-9 * volt;
        };
        ASSERT_LE(operating_point(pack, one.wells, one.power).voltage, most(one.wells))
            << described(one);
        const Advanced result = advance(pack, one.wells, one.power, one.time);
        ASSERT_LE(result.voltage, most(result.wells)) << described(one);
    }
}

// More offered never puts less in, at any moment.
TEST(battery_advance, a_brighter_sun_charges_no_slower) {
    Cases from;
    for (int index = 0; index < cases; ++index) {
        const Case one = from.next(false);
        if (!(one.power < Power{})) continue;
        const Prepared pack = prepare(one.arrangement);
        const Current less = operating_point(pack, one.wells, one.power).current;
        const Current more =
            operating_point(pack, one.wells, from.spread(1.0, 3.0) * one.power).current;
        ASSERT_LE(more / ampere, less / ampere + 1e-9 * std::abs(less / ampere)) << described(one);
    }
}

TEST(battery_advance, charge_is_conserved) {
    Cases from;
    int across = 0;
    for (int index = 0; index < cases; ++index) {
        const Case one = from.next(index % 2 == 0);
        const Advanced result = advance(prepare(one.arrangement), one.wells, one.power, one.time);
        const Charge total = one.arrangement.kinetics.total;
        if (result.charge_in == Charge{}) {
            const Charge removed = result.wells.removed - one.wells.removed;
            ASSERT_NEAR((removed - result.charge_out) / total, 0.0, 1e-12) << described(one);
            continue;
        }
        ASSERT_EQ(result.charge_out, Charge{});
        const Charge needed =
            needed_at_terminals(one.arrangement, one.wells.removed, result.wells.removed);
        ASSERT_NEAR((result.charge_in - needed) / total, 0.0, 1e-11) << described(one);
        const double stored = (one.wells.removed - result.wells.removed) / result.charge_in;
        double least = 1.0;
        double most = 0.0;
        const ChargeEfficiency& efficiency = one.arrangement.charging.coulombic;
        for (int piece = 0; piece < efficiency.pieces(); ++piece) {
            least = std::min(least, efficiency.of_piece(piece).value());
            most = std::max(most, efficiency.of_piece(piece).value());
        }
        if (stored > least + 1e-6 && stored < most - 1e-6) ++across;
    }
    EXPECT_GT(across, cases / 20);  // pass an edge, or lie between two
}

TEST(battery_advance, the_wells_never_overflow_and_discharge_never_passes_empty) {
    Cases from;
    for (int index = 0; index < cases; ++index) {
        const Case one = from.next(index % 2 == 0);
        const Advanced result = advance(prepare(one.arrangement), one.wells, one.power, one.time);
        const Kinetics& kinetics = one.arrangement.kinetics;
        ASSERT_LE(available_fill(kinetics, result.wells).value(), 1.0 + 1e-11) << described(one);
        ASSERT_LE(bound_fill(kinetics, result.wells).value(), 1.0 + 1e-11) << described(one);
        const double locked = one.arrangement.reachable.complement().value();
        const double least =
            one.power > Power{} && result.time > Duration{} ? locked - 1e-9 : -1e-11;
        ASSERT_GE(available_fill(kinetics, result.wells).value(), least) << described(one);
    }
}

TEST(battery_advance, asking_again_after_a_threshold_ends_at_once) {
    Cases from;
    int ended = 0;
    for (int index = 0; index < cases; ++index) {
        const Case one = from.next(true);
        const Prepared pack = prepare(one.arrangement);
        const Advanced result = advance(pack, one.wells, one.power, one.time);
        if (result.ending == Ending::completed || result.ending == Ending::full) continue;
        ++ended;
        const Advanced again = advance(pack, result.wells, one.power, one.time);
        ASSERT_LT(again.time, 1e-3 * second) << described(one);
        ASSERT_NE(again.ending, Ending::completed) << described(one);
    }
    EXPECT_GT(ended, cases / 10);
}

// The tolerance is a voltage, and on the plateau of LiFePO4 a millivolt is a good part of the
// charge (4 mV a percent): there, while absorption holds the voltage, the difference is largest.
TEST(battery_advance, two_steps_are_one) {
    Cases from;
    double worst = 0.0;
    for (int index = 0; index < cases / 4; ++index) {
        Case one = from.next(false);
        const Prepared pack = prepare(one.arrangement, 0.001 * volt);
        const Advanced whole = advance(pack, one.wells, one.power, one.time);
        if (whole.ending != Ending::completed) continue;
        const Advanced first = advance(pack, one.wells, one.power, 0.37 * one.time);
        const Advanced second = advance(pack, first.wells, one.power, one.time - 0.37 * one.time);
        const double apart =
            std::abs((second.wells.removed - whole.wells.removed) / one.arrangement.kinetics.total);
        worst = std::max(worst, apart);
        ASSERT_LT(apart, 5e-4) << described(one);
    }
    std::printf("largest difference of charge, part of the whole: %.2e\n", worst);
}

// At a steady current every substep is exact, and so is absorption: how often the clock looks must
// not show, wherever the looks fall between the ends of the pieces.
TEST(battery_advance, one_long_charge_is_many_short_ones) {
    Cases from;
    for (int index = 0; index < 200; ++index) {
        Arrangement arrangement = from.arrangement();
        arrangement.charging.allowed = true;
        arrangement.charging.largest.reset();
        arrangement.charging.absorption.reset();
        const Prepared pack = prepare(arrangement);
        const Charge total = arrangement.kinetics.total;
        const Current current = -from.spread(0.02, 0.3) * total / (1.0 * hour);
        const Duration lasts = from.between(1.0, 2.0) * total / -current;
        const Wells start = rested(arrangement.kinetics, StateOfCharge(from.between(0.0, 0.9)));
        const Advanced whole = advance(pack, start, current, lasts);
        ASSERT_EQ(whole.ending, Ending::completed);
        Wells wells = start;
        Charge in{};
        const int steps = 1 + static_cast<int>(from.between(10.0, 400.0));
        for (int step = 0; step < steps; ++step) {
            const Advanced part = advance(pack, wells, current, lasts / double(steps));
            wells = part.wells;
            in += part.charge_in;
        }
        ASSERT_NEAR((wells.removed - whole.wells.removed) / total, 0.0, 1e-9) << index;
        ASSERT_NEAR((in - whole.charge_in) / total, 0.0, 1e-9) << index;
    }
}

TEST(battery_advance, a_fuller_pack_never_lasts_shorter) {
    Cases from;
    for (int index = 0; index < cases / 2; ++index) {
        Case one = from.next(false);
        if (!(one.power > Power{})) continue;
        one.arrangement.stops.cut_off = from.between(10.0, 12.0) * volt;
        const Prepared pack = prepare(one.arrangement);
        Wells fuller = one.wells;
        fuller.removed -=
            from.between(0.0, 0.2) *
            std::min(
                fuller.removed,
                Charge(available_fill(one.arrangement.kinetics, one.wells).complement().value() *
                       one.arrangement.kinetics.total));
        const Duration less = advance(pack, one.wells, one.power, one.time).time;
        const Duration more = advance(pack, fuller, one.power, one.time).time;
        ASSERT_GE(more / second, less / second * (1.0 - 1e-4) - 1e-3) << described(one);
    }
}

TEST(battery_advance, rest_after_discharge_never_lowers_the_available_well) {
    Cases from;
    for (int index = 0; index < cases; ++index) {
        Case one = from.next(false);
        if (one.wells.head_difference < Charge{}) continue;
        const Advanced rested = advance(prepare(one.arrangement), one.wells, Power{}, one.time);
        ASSERT_GE(available_fill(one.arrangement.kinetics, rested.wells).value(),
                  available_fill(one.arrangement.kinetics, one.wells).value() - 1e-13)
            << described(one);
        ASSERT_EQ(rested.wells.removed, one.wells.removed);
    }
}

TEST(battery_advance, charging_that_is_not_allowed_moves_no_charge) {
    Cases from;
    for (int index = 0; index < cases / 4; ++index) {
        Case one = from.next(false);
        if (!(one.power < Power{})) continue;
        one.arrangement.charging.allowed = false;
        const Advanced result = advance(prepare(one.arrangement), one.wells, one.power, one.time);
        ASSERT_EQ(result.wells.removed, one.wells.removed);
        ASSERT_EQ(result.energy.accepted, Energy{});
    }
}

}  // namespace
