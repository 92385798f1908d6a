#include "battery/advance.hpp"

#include "battery/cell/chemistry.hpp"

namespace {

using namespace battery;
using namespace units;
using scenario::Chemistry;

Arrangement agm() {
    return {.kinetics = {110.0 * ampere_hour, Share(0.345), 1.02 * per_hour},
            .open_circuit = &open_circuit_of(Chemistry::agm),
            .inner = 0.0066 * ohm,
            .path = 0.002 * ohm,
            .charging = {
                .largest = 30.0 * ampere, .absorption = 14.4 * volt, .coulombic = Efficiency(0.9)}};
}

Arrangement lifepo4() {
    return {.kinetics = {100.0 * ampere_hour, Share(1.0), Frequency{}},
            .open_circuit = &open_circuit_of(Chemistry::lifepo4),
            .inner = 0.010 * ohm,
            .charging = {.largest = 50.0 * ampere, .absorption = 14.4 * volt}};
}

Wells at(const Arrangement& arrangement, double fill) {
    return rested(arrangement.kinetics, StateOfCharge(fill));
}

TEST(advance, a_pack_at_rest_keeps_its_charge_for_60_days) {
    const Arrangement pack = agm();
    const Advanced later = advance(prepare(pack), at(pack, 0.4), Power{}, 60.0 * day);
    EXPECT_EQ(later.wells, at(pack, 0.4));
    EXPECT_EQ(later.time, 60.0 * day);
    EXPECT_EQ(later.ending, Ending::completed);
    EXPECT_EQ(later.current, Current{});
}

TEST(advance, power_times_time_is_delivered) {
    const Advanced run = advance(prepare(agm()), Wells{}, 100.0 * watt, 3.0 * hour);
    EXPECT_EQ(run.ending, Ending::completed);
    EXPECT_NEAR(run.energy.delivered / watt_hour, 300.0, 1e-9);
    EXPECT_NEAR(run.voltage * run.current / watt, 100.0, 1e-9);
    EXPECT_GT(run.current, run.charge_out / run.time);  // the voltage falls, so the current rises
    EXPECT_EQ(run.largest, run.current);
}

TEST(advance, at_a_cut_off_the_voltage_is_the_cut_off) {
    Arrangement pack = agm();
    pack.stops.cut_off = 11.4 * volt;
    const Advanced run = advance(prepare(pack), Wells{}, 600.0 * watt, 10.0 * hour);
    EXPECT_EQ(run.ending, Ending::cut_off);
    EXPECT_NEAR(run.voltage / volt, 11.4, 1e-9);
    EXPECT_GT(available_fill(pack.kinetics, run.wells), StateOfCharge(0.0));
}

TEST(advance, a_pack_cut_off_is_measured_before_the_path) {
    Arrangement pack = agm();
    pack.stops.pack_cut_off = 11.5 * volt;
    const Advanced run = advance(prepare(pack), Wells{}, 600.0 * watt, 10.0 * hour);
    EXPECT_EQ(run.ending, Ending::pack_cut_off);
    EXPECT_NEAR((run.voltage + run.current * pack.path) / volt, 11.5, 1e-9);
}

TEST(advance, a_current_limit_ends_when_the_sagging_voltage_asks_for_it) {
    Arrangement pack = agm();
    pack.stops.current_above = 53.0 * ampere;
    const Advanced run = advance(prepare(pack), Wells{}, 600.0 * watt, 10.0 * hour);
    EXPECT_EQ(run.ending, Ending::current_limit);
    EXPECT_NEAR(run.current / ampere, 53.0, 1e-8);
}

TEST(advance, empty_is_the_available_well_and_cold_makes_it_come_sooner) {
    Arrangement pack = agm();
    const Advanced warm = advance(prepare(pack), Wells{}, 50.0 * watt, 100.0 * hour);
    pack.reachable = Share(0.8);
    const Advanced cold = advance(prepare(pack), Wells{}, 50.0 * watt, 100.0 * hour);
    EXPECT_EQ(warm.ending, Ending::available_well_empty);
    EXPECT_NEAR(available_fill(pack.kinetics, warm.wells).value(), 0.0, 1e-12);
    EXPECT_NEAR(available_fill(pack.kinetics, cold.wells).value(), 0.2, 1e-12);
    EXPECT_LT(cold.time, warm.time);
}

TEST(advance, the_usable_limit_is_on_the_charge_removed) {
    Arrangement pack = lifepo4();
    pack.stops.removed_above = 90.0 * ampere_hour;
    const Advanced run = advance(prepare(pack), Wells{}, 100.0 * watt, 60.0 * hour);
    EXPECT_EQ(run.ending, Ending::usable_limit);
    EXPECT_NEAR(run.wells.removed / ampere_hour, 90.0, 1e-9);
    EXPECT_NEAR(run.charge_out / ampere_hour, 90.0, 1e-9);
}

TEST(advance, a_power_that_no_voltage_gives_is_refused_with_the_largest_that_there_is) {
    const Arrangement pack = lifepo4();
    const Advanced run = advance(prepare(pack), at(pack, 0.5), 6000.0 * watt, 1.0 * hour);
    EXPECT_EQ(run.ending, Ending::cannot_be_delivered);
    EXPECT_EQ(run.time, Duration{});
    // 13.196 V behind 10 milliohm: E^2 / 4R by hand
    EXPECT_NEAR(run.at_most / watt, 13.196 * 13.196 / 0.04, 0.1);
}

TEST(advance, collapse_comes_at_twice_the_root_of_resistance_times_power) {
    const Arrangement pack = lifepo4();
    const Advanced run = advance(prepare(pack), at(pack, 0.5), 4100.0 * watt, 10.0 * hour);
    EXPECT_EQ(run.ending, Ending::cannot_be_delivered);
    EXPECT_GT(run.time, Duration{});
    const Voltage rested_then =
        pack.open_circuit->voltage(available_fill(pack.kinetics, run.wells));
    EXPECT_NEAR(rested_then / volt, 2.0 * std::sqrt(0.010 * 4100.0), 1e-6);
}

TEST(advance, charging_keeps_its_current_limit_and_counts_what_it_refused) {
    const Arrangement pack = agm();
    const Advanced run = advance(prepare(pack), at(pack, 0.3), -1000.0 * watt, 0.5 * hour);
    EXPECT_NEAR(run.charge_in / ampere_hour, 15.0, 1e-9);
    EXPECT_NEAR((at(pack, 0.3).removed - run.wells.removed) / ampere_hour, 13.5, 1e-9);
    EXPECT_NEAR((run.energy.accepted + run.energy.unaccepted) / watt_hour, 500.0, 1e-9);
    EXPECT_GT(run.energy.unaccepted, Energy{});
}

TEST(advance, charging_never_passes_the_absorption_voltage) {
    const Arrangement pack = lifepo4();
    Wells wells = at(pack, 0.97);
    for (int step = 0; step < 300; ++step) {
        const Advanced run = advance(prepare(pack), wells, -300.0 * watt, 30.0 * second);
        wells = run.wells;
        EXPECT_LE(run.voltage, 14.4 * volt + 0.001 * volt);
    }
    EXPECT_GT(available_fill(pack.kinetics, wells), StateOfCharge(0.995));
}

// What absorption comes to is where the charging curve stands at its voltage; a long step must not
// carry a pack past it, nor past one that began fuller. [battery method] (20a)
TEST(advance, absorption_fills_no_further_than_its_voltage_whatever_the_step) {
    Arrangement pack = lifepo4();
    pack.charging.absorption = 14.1 * volt;
    const auto& table = *pack.open_circuit;
    double low = 0.99;
    double high = 1.0;
    while (high - low > 1e-15)
        (table.charging_voltage(StateOfCharge(0.5 * (low + high))) < 14.1 * volt ? low : high) =
            0.5 * (low + high);
    const auto charged = [&](double from, double watts, double minutes) {
        const Advanced run =
            advance(prepare(pack), at(pack, from), -watts * watt, minutes * minute);
        return available_fill(pack.kinetics, run.wells).value();
    };
    for (double watts = 2.0; watts < 500.0; watts *= 1.7)
        for (double minutes = 0.5; minutes < 3000.0; minutes *= 1.3) {
            double before = 0.0;
            for (double from = 0.96; from < high; from += 0.0007) {
                const double fill = charged(from, watts, minutes);
                EXPECT_LE(fill, high + 1e-13) << from << " " << watts << " " << minutes;
                EXPECT_GE(fill - before, -1e-12) << from << " " << watts << " " << minutes;
                before = fill;
            }
        }
    EXPECT_NEAR(charged(0.96, 200.0, 600.0), high, 1e-9);
}

TEST(advance, lead_acid_tapers_once_its_available_well_is_full) {
    const Arrangement pack = agm();
    const Prepared prepared = prepare(pack);
    const Advanced bulk = advance(prepared, at(pack, 0.6), -300.0 * watt, 1.5 * hour);
    const Advanced later = advance(prepared, bulk.wells, -300.0 * watt, 2.0 * hour);
    EXPECT_NEAR(available_fill(pack.kinetics, bulk.wells).value(), 1.0, 1e-12);
    // time constant 1 / (k c), [battery method] (9)
    EXPECT_NEAR(later.current / bulk.current, std::exp(-2.0 * 1.02 * 0.345), 1e-9);
    EXPECT_LT(bound_fill(pack.kinetics, later.wells), StateOfCharge(1.0));
}

// A well that was just filled runs down into the bound one; its steep last piece, drawn on over the
// whole of a long time, would fall far below the absorption voltage, where the pack never comes.
TEST(advance, a_pack_above_its_absorption_voltage_takes_nothing_while_its_wells_even_out) {
    const Arrangement pack{.kinetics = {52.0 * ampere_hour, Share(0.486), 10.16 * per_hour},
                           .open_circuit = &open_circuit_of(Chemistry::lifepo4),
                           .inner = 0.00014 * ohm,
                           .charging = {.absorption = 12.82 * volt}};
    const Wells filled{.removed = 23.26 * ampere_hour, .head_difference = -45.03 * ampere_hour};
    ASSERT_GT(available_fill(pack.kinetics, filled), StateOfCharge(0.995));
    const Advanced run = advance(prepare(pack), filled, -2300.0 * watt, 10.75 * hour);
    EXPECT_EQ(run.charge_in, Charge{});
    EXPECT_EQ(run.wells.removed, filled.removed);
}

// The table has a knot at half charge, so that two things happen at one instant.
TEST(advance, full_is_met_where_a_knot_lies_just_there) {
    Arrangement pack = lifepo4();
    pack.open_circuit = &open_circuit_of(Chemistry::agm);
    pack.charging = {};
    pack.stops.filled_to = 0.5 * pack.kinetics.total;
    for (double watts = 10.0; watts < 2000.0; watts *= 1.05)
        EXPECT_EQ(advance(prepare(pack), at(pack, 0.4), -watts * watt, 400.0 * hour).ending,
                  Ending::full)
            << watts;
}

// 80 % is stored up to half charge, 50 % up to 60 %, 25 % beyond.
const ChargeEfficiency falling(std::array{StateOfCharge(0.5), StateOfCharge(0.6)},
                               std::array{Efficiency(0.8), Efficiency(0.5), Efficiency(0.25)});

TEST(advance, charging_slows_down_where_less_of_it_is_stored) {
    Arrangement pack = lifepo4();
    pack.charging.coulombic = falling;
    pack.stops.removed_below = 35.0 * ampere_hour;
    const Advanced run = advance(prepare(pack), at(pack, 0.4), -10.0 * ampere, 10.0 * hour);
    EXPECT_EQ(run.ending, Ending::charge_restored);
    // 10 Ah at 80 %, 10 Ah at 50 %, 5 Ah at 25 %
    EXPECT_NEAR(run.charge_in / ampere_hour, 10.0 / 0.8 + 10.0 / 0.5 + 5.0 / 0.25, 1e-9);
    EXPECT_NEAR(run.time / hour, 5.25, 1e-9);
}

TEST(advance, a_stop_where_the_efficiency_changes_is_met) {
    Arrangement pack = lifepo4();
    pack.charging.coulombic = falling;
    pack.stops.removed_below = StateOfCharge(0.5).complement().value() * pack.kinetics.total;
    EXPECT_EQ(advance(prepare(pack), at(pack, 0.4), -10.0 * ampere, 5.0 * hour).ending,
              Ending::charge_restored);
    pack.stops = {.filled_to = pack.stops.removed_below};
    const Advanced full = advance(prepare(pack), at(pack, 0.4), -10.0 * ampere, 5.0 * hour);
    EXPECT_EQ(full.ending, Ending::full);
    EXPECT_NEAR(full.time / hour, 1.25, 1e-9);
    // The AGM table has a knot at half charge: three things happen at one instant.
    pack.open_circuit = &open_circuit_of(Chemistry::agm);
    pack.charging = {.coulombic = falling};
    for (double watts = 10.0; watts < 2000.0; watts *= 1.05)
        EXPECT_EQ(advance(prepare(pack), at(pack, 0.4), -watts * watt, 400.0 * hour).ending,
                  Ending::full)
            << watts;
}

// What seeps on into the bound well is the wells' matter; the terminals bring what is lost beside.
TEST(advance, absorption_takes_more_at_the_terminals_where_less_is_stored) {
    Arrangement pack = agm();
    pack.charging.coulombic = ChargeEfficiency(std::array{StateOfCharge(0.97)},
                                               std::array{Efficiency(0.9), Efficiency(0.5)});
    const Charge edge = 0.03 * pack.kinetics.total;
    const Wells start{.removed = 0.06 * pack.kinetics.total,
                      .head_difference = -0.06 / (1.0 - 0.345) * pack.kinetics.total};
    ASSERT_NEAR(available_fill(pack.kinetics, start).value(), 1.0, 1e-12);
    const Duration halved = std::log(2.0) / (1.02 * 0.345) * hour;
    const Advanced whole = advance(prepare(pack), start, -300.0 * watt, 2.0 * halved);
    EXPECT_NEAR(whole.wells.removed / edge, 0.5, 1e-9);
    EXPECT_NEAR(whole.charge_in / ampere_hour, (edge / 0.9 + 0.5 * edge / 0.5) / ampere_hour, 1e-9);
    const Advanced before = advance(prepare(pack), start, -300.0 * watt, 0.9999 * halved);
    const Advanced behind = advance(prepare(pack), start, -300.0 * watt, 1.0001 * halved);
    EXPECT_NEAR(behind.current / before.current, 0.9 / 0.5, 1e-3);
}

// The last fifteen points of a lead-acid pack, against 90 % throughout. A weak source sets the pace
// itself; with a stronger one the bound well does, and what more is lost is taken beside.
TEST(advance, lead_acid_asks_for_more_over_its_end_than_by_one_number) {
    const auto to_95_percent = [](Power offered, const ChargeEfficiency& efficiency) {
        Arrangement pack = agm();
        pack.charging.coulombic = efficiency;
        pack.stops.removed_below = 0.05 * pack.kinetics.total;
        const Advanced run = advance(prepare(pack), at(pack, 0.8), -offered, 100.0 * hour);
        EXPECT_EQ(run.ending, Ending::charge_restored);
        return run;
    };
    const ChargeEfficiency law = lead_acid_efficiency(agm().kinetics, agm().kinetics.total);
    const Power weak = 15.0 * watt;
    EXPECT_GT(to_95_percent(weak, law).time, 1.01 * to_95_percent(weak, Efficiency(0.9)).time);
    for (const double watts : {15.0, 80.0})
        EXPECT_GT(to_95_percent(watts * watt, law).charge_in,
                  1.01 * to_95_percent(watts * watt, Efficiency(0.9)).charge_in);
}

TEST(advance, discharge_knows_no_efficiency_of_charging) {
    Arrangement pack = agm();
    const Advanced one = advance(prepare(pack), Wells{}, 100.0 * watt, 8.0 * hour);
    pack.charging.coulombic = falling;
    const Advanced other = advance(prepare(pack), Wells{}, 100.0 * watt, 8.0 * hour);
    EXPECT_EQ(one.wells, other.wells);
    EXPECT_EQ(one.energy.in_resistance, other.energy.in_resistance);
}

TEST(advance, a_full_pack_refuses_all_that_is_offered) {
    const Arrangement pack = lifepo4();
    const Advanced run = advance(prepare(pack), Wells{}, -100.0 * watt, 1.0 * hour);
    EXPECT_EQ(run.energy.accepted, Energy{});
    EXPECT_NEAR(run.energy.unaccepted / watt_hour, 100.0, 1e-12);
    EXPECT_EQ(run.wells, Wells{});
}

TEST(advance, a_cold_pack_that_must_not_be_charged_takes_nothing) {
    Arrangement pack = lifepo4();
    pack.charging.allowed = false;
    const Advanced run = advance(prepare(pack), at(pack, 0.5), -100.0 * watt, 1.0 * hour);
    EXPECT_EQ(run.wells, at(pack, 0.5));
    EXPECT_EQ(run.current, Current{});
    EXPECT_NEAR(run.energy.unaccepted / watt_hour, 100.0, 1e-12);
}

TEST(advance, a_restart_voltage_is_met_while_resting_by_recovery) {
    Arrangement pack = agm();
    const Prepared drawn_down = prepare(pack);
    const Advanced run = advance(drawn_down, Wells{}, 900.0 * watt, 40.0 * minute);
    const Voltage resting = pack.open_circuit->voltage(available_fill(pack.kinetics, run.wells));
    pack.stops.voltage_above = resting + 0.2 * volt;
    const Advanced rest = advance(prepare(pack), run.wells, Power{}, 5.0 * hour);
    EXPECT_EQ(rest.ending, Ending::voltage_restored);
    EXPECT_NEAR(rest.voltage / volt, (resting + 0.2 * volt) / volt, 1e-9);
    EXPECT_GT(rest.time, Duration{});
}

TEST(advance, a_restart_voltage_is_met_sooner_under_charge) {
    Arrangement pack = lifepo4();
    pack.stops.voltage_above = 12.9 * volt;
    const Advanced run = advance(prepare(pack), at(pack, 0.03), -120.0 * watt, 5.0 * hour);
    EXPECT_EQ(run.ending, Ending::voltage_restored);
    EXPECT_NEAR(run.voltage / volt, 12.9, 1e-8);
    EXPECT_LT(pack.open_circuit->voltage(available_fill(pack.kinetics, run.wells)), 12.9 * volt);
}

TEST(advance, charge_restored_and_full_are_met_on_the_way_up) {
    Arrangement pack = agm();
    pack.stops.removed_below = 30.0 * ampere_hour;
    const Advanced restored = advance(prepare(pack), at(pack, 0.5), -200.0 * watt, 9.0 * hour);
    EXPECT_EQ(restored.ending, Ending::charge_restored);
    EXPECT_NEAR(restored.wells.removed / ampere_hour, 30.0, 1e-9);
    pack.stops = {.filled_to = 1.0 * ampere_hour};
    const Prepared prepared = prepare(pack);
    const Advanced full = advance(prepared, restored.wells, -200.0 * watt, 60.0 * hour);
    EXPECT_EQ(full.ending, Ending::full);
    EXPECT_NEAR(full.wells.removed / ampere_hour, 1.0, 1e-9);
    EXPECT_EQ(advance(prepared, full.wells, -200.0 * watt, 1.0 * hour).ending, Ending::completed);
}

TEST(advance, microwatts_and_no_time_are_no_trouble) {
    const Arrangement pack = agm();
    const Advanced tiny = advance(prepare(pack), at(pack, 0.5), 1e-6 * watt, 60.0 * day);
    EXPECT_NEAR(tiny.energy.delivered / joule, 1e-6 * 60.0 * 86400.0, 1e-9);
    const Advanced none = advance(prepare(pack), at(pack, 0.5), 100.0 * watt, Duration{});
    EXPECT_EQ(none.wells, at(pack, 0.5));
    EXPECT_EQ(none.ending, Ending::completed);
}

TEST(advance, without_resistance_the_voltage_is_the_rested_one) {
    Arrangement pack = lifepo4();
    pack.inner = Resistance{};
    const Advanced run = advance(prepare(pack), at(pack, 0.5), 5000.0 * watt, 1.0 * minute);
    EXPECT_EQ(run.ending, Ending::completed);
    EXPECT_EQ(run.energy.in_resistance, Energy{});
    EXPECT_FALSE(largest_power(prepare(pack), run.wells).has_value());
}

// Rounding once led back over the knot at 30 % by which the available well had come, again and
// again, before the well turned round there in truth.
TEST(advance, a_well_that_turns_round_at_a_knot_passes_it_once) {
    Arrangement pack = agm();
    pack.kinetics.total = 393503.83627084561 * coulomb;
    const Prepared prepared = prepare(pack);
    const auto state = state_of(prepared, 271572.70992896362, 13314.926476807013);
    const auto course =
        advance_detail::course_of(prepared, AtPower{2.5714285714285716}, state, 16412.778729438782);
    EXPECT_EQ(course.ending, Ending::completed);
    EXPECT_EQ(course.time, 16412.778729438782);
    EXPECT_LT(course.substeps, 10);
    // 2.57 W at 12.1 V for all of the time
    EXPECT_NEAR(course.state.removed - state.removed, 2.5714285714285716 / 12.11 * 16412.8, 3.0);
}

}  // namespace
