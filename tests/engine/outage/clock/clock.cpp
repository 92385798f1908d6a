#include "outage/clock/clock.hpp"

#include "battery/cell/chemistry.hpp"

namespace {

using namespace units;
using outage::EventKind;
using outage::LimitedBy;

outage::Unit lithium_unit(int packs = 2) {
    outage::Unit unit;
    auto& bank = unit.bank;
    bank.setup = {
        .kinetics = {.total = 100.0 * ampere_hour},
        .open_circuit = &battery::open_circuit_of(scenario::Chemistry::lifepo4),
        .inner = 0.010 * ohm,
        .path = 0.002 * ohm,
        .charging = {.largest = 50.0 * ampere,
                     .absorption = 14.4 * volt,
                     .coulombic = Efficiency(0.995)},
    };
    bank.count = packs;
    bank.rated = 100.0 * ampere_hour;
    bank.usable = 90.0 * ampere_hour;
    bank.cut_off = 10.0 * volt;
    bank.current_limit = 100.0 * ampere;
    unit.inverter = inverter::Model{
        .continuous = 2400.0 * watt,
        .continuous_apparent = 2400.0 * volt_ampere,
        .losses = {.idle = 18.0 * watt, .linear = 1.0 / 0.9 - 1.0, .rating = 2400.0 * watt},
        .cutoff_voltage = 10.5 * volt,
        .restart_voltage = 12.5 * volt,
    };
    return unit;
}

demand::DemandStep from(Duration start, Power ac, Power direct = {}) {
    return {
        .from = start, .ac = ac, .direct = direct, .direct_useful = direct, .inverter_on = true};
}

int events_of(const outage::Course& course, EventKind kind) {
    return static_cast<int>(std::count_if(course.events.begin(), course.events.end(),
                                          [&](const auto& event) { return event.kind == kind; }));
}

TEST(clock, a_unit_that_carries_everything_survives_and_lasts_the_whole_outage) {
    const std::vector demand{from({}, 50.0 * watt)};
    const auto course = outage::run(lithium_unit(), demand, {}, 12.0 * hour, 6.0 * hour);
    EXPECT_TRUE(course.survives);
    EXPECT_EQ(course.limited_by, LimitedBy::none);
    EXPECT_DOUBLE_EQ(course.lasts / hour, 12.0);
    EXPECT_DOUBLE_EQ(course.ledger.loads / watt_hour, 600.0);
    EXPECT_DOUBLE_EQ(course.ledger.unserved / watt_hour, 0.0);
    EXPECT_NEAR(course.ledger.idle / watt_hour, 18.0 * 12.0, 1e-9);
    EXPECT_LT(course.ledger.relative_residual, 1e-12);
}

TEST(clock, a_steady_draw_ends_when_the_usable_charge_is_drawn) {
    // 180 Ah leave at (61.29 / 0.9 + 18) W; the mean terminal voltage must lie on the plateau of
    // the table, 13.1 to 13.4 V, less the drop of 3.3 A in 12 milliohm.
    const std::vector demand{from({}, 61.29 * watt)};
    const auto course = outage::run(lithium_unit(), demand, {}, 72.0 * hour, 6.0 * hour);
    ASSERT_FALSE(course.survives);
    EXPECT_EQ(course.limited_by, LimitedBy::usable);
    EXPECT_EQ(events_of(course, EventKind::packs_at_usable_limit), 1);
    EXPECT_EQ(course.crosses_usable_at, course.lasts);
    const double mean_voltage = 86.1 * (course.lasts / hour) / 180.0;
    EXPECT_GT(mean_voltage, 13.05);
    EXPECT_LT(mean_voltage, 13.36);
    // Nothing is switched off by it: a tenth of the charge more, at a little less voltage.
    const double served = course.ledger.loads / watt_hour / 61.29;
    EXPECT_GT(served / (course.lasts / hour), 1.07);
    EXPECT_LT(served / (course.lasts / hour), 1.11);
    EXPECT_NEAR(course.ledger.unserved / watt_hour, 61.29 * (72.0 - served), 1e-6);
    EXPECT_NEAR(course.without / hour, 72.0 - served, 1e-9);
    EXPECT_LT(course.ledger.relative_residual, 1e-11);
}

TEST(clock, one_course_may_be_cut_anywhere_without_changing_it) {
    const std::vector whole{from({}, 300.0 * watt)};
    std::vector<demand::DemandStep> cut;
    for (int i = 0; i < 200; ++i) {
        auto step = from(static_cast<double>(i) * 211.0 * second, 300.0 * watt);
        step.direct_useful = step.direct = (i % 2) * 1e-9 * watt;  // not the same step twice
        cut.push_back(step);
    }
    const auto a = outage::run(lithium_unit(), whole, {}, 24.0 * hour, 6.0 * hour);
    const auto b = outage::run(lithium_unit(), cut, {}, 24.0 * hour, 6.0 * hour);
    ASSERT_FALSE(a.survives);
    EXPECT_NEAR(a.lasts / second, b.lasts / second, 0.5);
}

TEST(clock, the_sun_carries_the_load_first_and_stores_the_rest) {
    const std::vector demand{from({}, {}, 40.0 * watt)};
    const std::vector<outage::SunChange> sun{{.from = {}, .offered = 100.0 * watt},
                                             {.from = 1.0 * hour, .offered = 100.0 * watt}};
    auto unit = lithium_unit(1);
    unit.inverter.reset();
    unit.bank.at_start = {.removed = 50.0 * ampere_hour};
    std::vector<outage::SunOfDay> days;
    const auto course = outage::run(unit, demand, sun, 2.0 * hour, 1.0 * hour, {}, &days);
    EXPECT_NEAR(course.ledger.sun_used / watt_hour, 80.0, 1e-9);
    EXPECT_NEAR(course.ledger.sun_stored / watt_hour, 120.0, 1e-9);
    EXPECT_NEAR(course.ledger.sun_unused / watt_hour, 0.0, 1e-9);
    EXPECT_GT(course.ledger.stored_at_end, course.ledger.stored_at_start);
    ASSERT_EQ(days.size(), 2U);
    EXPECT_NEAR(days[0].taken / watt_hour, 100.0, 1e-9);
    EXPECT_NEAR(days[1].offered / watt_hour, 100.0, 1e-9);
}

TEST(clock, what_a_full_pack_refuses_is_told_apart) {
    const std::vector demand{from({}, {})};
    const std::vector<outage::SunChange> sun{{.from = {}, .offered = 200.0 * watt}};
    auto unit = lithium_unit(1);
    unit.inverter.reset();
    unit.bank.at_start = {.removed = 5.0 * ampere_hour};
    const auto course = outage::run(unit, demand, sun, 3.0 * hour, 1.0 * hour);
    EXPECT_GT(course.ledger.sun_unused / watt_hour, 500.0);
    EXPECT_EQ(events_of(course, EventKind::packs_full), 1);
    EXPECT_LT(course.ledger.relative_residual, 1e-11);
    EXPECT_NEAR(
        (course.ledger.sun_used + course.ledger.sun_stored + course.ledger.sun_unused) / joule,
        course.ledger.sun_offered / joule, 1e-6);
}

TEST(clock, cold_lithium_takes_nothing_from_the_sun_but_the_load_still_may) {
    const std::vector demand{from({}, {}, 40.0 * watt)};
    const std::vector<outage::SunChange> sun{{.from = {}, .offered = 100.0 * watt}};
    auto unit = lithium_unit(1);
    unit.inverter.reset();
    unit.bank.setup.charging.allowed = false;
    unit.bank.at_start = {.removed = 50.0 * ampere_hour};
    const auto course = outage::run(unit, demand, sun, 2.0 * hour, 1.0 * hour);
    EXPECT_DOUBLE_EQ(course.ledger.sun_stored / watt_hour, 0.0);
    EXPECT_NEAR(course.ledger.sun_used / watt_hour, 80.0, 1e-9);
    EXPECT_NEAR(course.ledger.sun_unused / watt_hour, 120.0, 1e-9);
}

TEST(clock, a_low_inverter_rests_five_minutes_and_tries_again) {
    // A heavy load sags one pack below the cut-off; without it the voltage is well above restart.
    auto unit = lithium_unit(1);
    unit.inverter->restart = scenario::Restart::by_itself;
    unit.bank.current_limit.reset();
    unit.bank.cut_off.reset();
    const std::vector demand{from({}, 100.0 * watt), from(1.0 * hour, 2390.0 * watt),
                             from(1.0 * hour + 12.0 * minute, 100.0 * watt)};
    const auto course = outage::run(unit, demand, {}, 2.0 * hour, 1.0 * hour);
    EXPECT_EQ(course.limited_by, LimitedBy::low_voltage);
    EXPECT_DOUBLE_EQ(course.lasts / hour, 1.0);
    // at 60, 65 and 70 minutes; on again at 65, 70 and 75
    const int sagged = events_of(course, EventKind::inverter_off_low_voltage) +
                       events_of(course, EventKind::cannot_be_delivered);
    EXPECT_EQ(sagged, 3);
    EXPECT_EQ(events_of(course, EventKind::inverter_on_again), 3);
    EXPECT_NEAR(course.without / minute, 15.0, 1e-6);
}

// The same with somebody at hand: who switches it off and on sees to it that the heavy load is off.
TEST(clock, a_low_inverter_is_switched_on_by_hand_when_the_heavy_load_is_over) {
    auto unit = lithium_unit(1);
    unit.bank.current_limit.reset();
    unit.bank.cut_off.reset();
    const auto course_with = [&](Duration heavy) {
        const std::vector demand{from({}, 100.0 * watt), from(1.0 * hour, 2390.0 * watt),
                                 from(1.0 * hour + heavy, 100.0 * watt)};
        return outage::run(unit, demand, {}, 2.0 * hour, 1.0 * hour);
    };
    const auto course = course_with(12.0 * minute);
    EXPECT_EQ(course.limited_by, LimitedBy::low_voltage);
    EXPECT_EQ(events_of(course, EventKind::inverter_on_again), 1);
    EXPECT_NEAR(course.without / minute, 12.0, 1e-6);
    ASSERT_EQ(course.out.size(), 1U);
    EXPECT_EQ(course.out[0].part, outage::the_inverter);
    EXPECT_DOUBLE_EQ(course.out[0].from / minute, 60.0);
    EXPECT_DOUBLE_EQ(course.out[0].to / minute, 72.0);
    // and not before five minutes have passed
    EXPECT_NEAR(course_with(3.0 * minute).without / minute, 5.0, 1e-6);
}

TEST(clock, twelve_volt_loads_go_on_while_the_inverter_rests) {
    auto unit = lithium_unit(1);
    unit.bank.current_limit.reset();
    unit.bank.at_start = {.removed = 20.0 * ampere_hour};
    const std::vector demand{from({}, 2390.0 * watt, 20.0 * watt)};
    const auto course = outage::run(unit, demand, {}, 1.0 * hour, 1.0 * hour);
    EXPECT_NEAR(course.ledger.loads / watt_hour, 20.0, 1e-6);
    EXPECT_NEAR(course.ledger.unserved / watt_hour, 2390.0, 1e-6);
}

TEST(clock, an_overload_is_not_served_while_it_lasts) {
    const std::vector demand{from({}, 100.0 * watt), from(1.0 * hour, 2500.0 * watt),
                             from(2.0 * hour, 100.0 * watt)};
    const auto course = outage::run(lithium_unit(4), demand, {}, 3.0 * hour, 1.0 * hour);
    EXPECT_EQ(course.limited_by, LimitedBy::inverter_limit);
    EXPECT_DOUBLE_EQ(course.lasts / hour, 1.0);
    EXPECT_DOUBLE_EQ(course.without / hour, 1.0);
    EXPECT_EQ(events_of(course, EventKind::inverter_overload), 1);
    EXPECT_EQ(events_of(course, EventKind::inverter_overload_over), 1);
}

TEST(clock, packs_over_their_limit_open_and_close_when_less_is_asked) {
    auto unit = lithium_unit(1);
    const std::vector demand{from({}, 100.0 * watt), from(1.0 * hour, 1500.0 * watt),
                             from(2.0 * hour, 100.0 * watt)};
    const auto course = outage::run(unit, demand, {}, 3.0 * hour, 1.0 * hour);
    EXPECT_EQ(course.limited_by, LimitedBy::pack_limit);
    EXPECT_EQ(events_of(course, EventKind::packs_over_current), 1);
    EXPECT_EQ(events_of(course, EventKind::inverter_on_again), 1);
    EXPECT_DOUBLE_EQ(course.without / hour, 1.0);
}

TEST(clock, a_blown_fuse_stays_blown) {
    auto unit = lithium_unit(1);
    unit.bank.fuse = 80.0 * ampere;
    const std::vector demand{from({}, 100.0 * watt), from(1.0 * hour, 1500.0 * watt),
                             from(2.0 * hour, 100.0 * watt)};
    const auto course = outage::run(unit, demand, {}, 3.0 * hour, 1.0 * hour);
    EXPECT_EQ(course.limited_by, LimitedBy::fuse);
    EXPECT_DOUBLE_EQ(course.without / hour, 2.0);
}

// LiFePO4 to its end: the lamp is out, and in again when 5 Ah are back. By hand: the table rises
// from 2.5 V over 2.93 V at 2.67 % to 3.03 V a cell at 5 %, 11.36 V in the mean, and 0.1 V for
// 8.7 A in 12 mohm; 100 W; a little does not arrive.
TEST(clock, what_is_empty_waits_for_a_twentieth_of_the_charge) {
    auto unit = lithium_unit(1);
    unit.inverter.reset();
    unit.bank.cut_off.reset();
    unit.bank.at_start = {.removed = 99.0 * ampere_hour};
    const std::vector demand{from({}, {}, 50.0 * watt)};
    const std::vector<outage::SunChange> sun{{.from = {}},
                                             {.from = 2.0 * hour, .offered = 100.0 * watt}};
    const auto course = outage::run(unit, demand, sun, 6.0 * hour, 1.0 * hour);
    EXPECT_EQ(events_of(course, EventKind::packs_empty), 1);
    const auto back =
        std::find_if(course.events.begin(), course.events.end(),
                     [](const auto& event) { return event.kind == EventKind::load_on_again; });
    ASSERT_NE(back, course.events.end());
    EXPECT_NEAR((back->at - 2.0 * hour) / hour, 5.0 * 11.46 / 0.995 / 100.0, 0.01);
}

TEST(clock, packs_that_start_beyond_their_usable_limit_promise_nothing_and_serve) {
    auto unit = lithium_unit(1);
    unit.bank.at_start = {.removed = 95.0 * ampere_hour};
    const std::vector demand{from({}, {}, 50.0 * watt)};
    const std::vector<outage::SunChange> sun{{.from = {}, .offered = 100.0 * watt}};
    const auto course = outage::run(unit, demand, sun, 4.0 * hour, 1.0 * hour);
    EXPECT_DOUBLE_EQ(course.lasts / hour, 0.0);
    EXPECT_EQ(course.limited_by, LimitedBy::usable);
    ASSERT_TRUE(course.crosses_usable_at);
    EXPECT_DOUBLE_EQ(*course.crosses_usable_at / hour, 0.0);
    EXPECT_DOUBLE_EQ(course.ledger.unserved / watt_hour, 0.0);
}

TEST(clock, switching_the_inverter_off_saves_its_idle_draw) {
    auto on = from({}, {});
    auto off = from({}, {});
    off.inverter_on = false;
    const auto idle = outage::run(lithium_unit(), std::vector{on}, {}, 10.0 * hour, 1.0 * hour);
    const auto saved = outage::run(lithium_unit(), std::vector{off}, {}, 10.0 * hour, 1.0 * hour);
    EXPECT_NEAR(idle.ledger.inverter_loss / watt_hour, 180.0, 1e-9);
    EXPECT_DOUBLE_EQ(saved.ledger.inverter_loss / watt_hour, 0.0);
    EXPECT_DOUBLE_EQ(saved.ledger.stored_at_end / joule, saved.ledger.stored_at_start / joule);
}

TEST(clock, the_trace_begins_at_the_start_and_ends_at_the_end) {
    const std::vector demand{from({}, 50.0 * watt), from(3.0 * hour, 80.0 * watt)};
    const auto course = outage::run(lithium_unit(), demand, {}, 12.0 * hour, 6.0 * hour);
    ASSERT_GE(course.trace.size(), 3U);
    EXPECT_DOUBLE_EQ(course.trace.front().at / hour, 0.0);
    EXPECT_DOUBLE_EQ(course.trace.back().at / hour, 12.0);
    EXPECT_DOUBLE_EQ(course.trace.front().charge.value(), 1.0);
    for (std::size_t i = 1; i < course.trace.size(); ++i)
        EXPECT_GE(course.trace[i].at, course.trace[i - 1].at);
}

TEST(clock, a_run_without_a_trace_gives_the_same_ledger) {
    const std::vector demand{from({}, 200.0 * watt)};
    const auto kept = outage::run(lithium_unit(), demand, {}, 24.0 * hour, 6.0 * hour);
    const auto bare =
        outage::run(lithium_unit(), demand, {}, 24.0 * hour, 6.0 * hour, {.trace = false});
    EXPECT_EQ(kept.lasts, bare.lasts);
    EXPECT_EQ(kept.ledger.loads, bare.ledger.loads);
    EXPECT_TRUE(bare.trace.empty());
}

}  // namespace
