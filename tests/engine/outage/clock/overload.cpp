#include "outage/clock/overload.hpp"

#include "battery/cell/chemistry.hpp"
#include "outage/clock/banks.hpp"
#include "outage/clock/clock.hpp"
#include "scenario/file/read.hpp"
#include "support/holds.hpp"

namespace {

using namespace units;
using outage::EventKind;
using outage::LimitedBy;

// 100 Ah that gives 100 A forever, 120 A for half an hour and 200 A for five seconds.
outage::Bank lithium(Resistance path = 0.002 * ohm) {
    outage::Bank bank;
    bank.setup = {.kinetics = {.total = 100.0 * ampere_hour},
                  .open_circuit = &battery::open_circuit_of(scenario::Chemistry::lifepo4),
                  .inner = 0.010 * ohm,
                  .path = path};
    bank.rated = 100.0 * ampere_hour;
    bank.usable = 100.0 * ampere_hour;
    bank.current_limit = 100.0 * ampere;
    bank.pulse = {{120.0 * ampere, 30.0 * minute}, {200.0 * ampere, 5.0 * second}};
    return bank;
}

outage::Unit unit_of(outage::Bank first, std::vector<outage::Bank> others = {}) {
    return {.bank = std::move(first), .others = std::move(others)};
}

// One draw after another, each from its hour on.
std::vector<demand::DemandStep> draws(const std::vector<std::pair<Duration, Power>>& steps) {
    std::vector<demand::DemandStep> demand;
    for (const auto& [from, power] : steps)
        demand.push_back({.from = from, .direct = power, .direct_useful = power});
    return demand;
}

outage::Course run(const outage::Unit& unit, const std::vector<std::pair<Duration, Power>>& steps) {
    return outage::run(unit, draws(steps), {}, 4.0 * hour, 12.0 * hour);
}

// 1,350 W are about 110 A, 1,700 W about 143 A, 2,400 W about 220 A.
constexpr Power long_pulse = 1350.0 * watt;
constexpr Power short_pulse = 1700.0 * watt;
constexpr Power beyond_all = 2400.0 * watt;

TEST(overload, a_pulse_is_stood_for_its_time_and_no_longer) {
    for (const auto& [power, lasts] : {std::pair{long_pulse, 30.0 * minute},
                                       {short_pulse, 5.0 * second},
                                       {beyond_all, 0.0 * second}}) {
        const auto course = run(unit_of(lithium()), {{{}, 50.0 * watt}, {1.0 * hour, power}});
        EXPECT_EQ(course.limited_by, LimitedBy::pack_limit);
        EXPECT_NEAR((course.lasts - 1.0 * hour) / second, lasts / second, 1e-5);
        ASSERT_EQ(course.events.size(), 1u);
        EXPECT_EQ(course.events.front().kind, EventKind::packs_over_current);
        EXPECT_NEAR(course.events.front().after / second, lasts / second, 1e-5);
    }
}

TEST(overload, says_what_was_stood_and_above_what) {
    const auto course =
        run(unit_of(lithium()),
            {{{}, 50.0 * watt}, {1.0 * hour, long_pulse}, {1.25 * hour, 50.0 * watt}});
    EXPECT_TRUE(course.survives);
    EXPECT_NEAR(course.strain.longest / minute, 15.0, 1e-6);
    EXPECT_EQ(course.strain.above, 100.0 * ampere);
    EXPECT_GT(course.strain.most, 105.0 * ampere);
    EXPECT_EQ(course.strain.most, course.highest_pack_current);
    EXPECT_EQ(run(unit_of(lithium()), {{{}, 50.0 * watt}}).strain.longest, Duration{});
}

TEST(overload, a_pause_gives_the_protection_its_time_back) {
    std::vector<std::pair<Duration, Power>> steps{{{}, 50.0 * watt}};
    for (int i = 0; i < 2; ++i) {
        steps.push_back({(0.5 + i * 0.5) * hour, 1150.0 * watt});
        steps.push_back({(0.9 + i * 0.5) * hour, 50.0 * watt});
    }
    auto bank = lithium();
    bank.current_limit = 80.0 * ampere;
    EXPECT_TRUE(run(unit_of(bank), steps).survives);
    steps[2].second = 1100.0 * watt;  // about 88 A: no pause
    const auto without_pause = run(unit_of(bank), steps);
    EXPECT_NEAR(without_pause.lasts / hour, 1.0, 1e-8);
}

// At constant power the current rises as the voltage falls: the time runs from where it passes.
TEST(overload, the_time_runs_from_the_moment_the_current_passes_the_limit) {
    auto at_once = lithium();
    at_once.current_limit = 60.0 * ampere;
    at_once.pulse.clear();
    auto stood = at_once;
    stood.pulse = {{70.0 * ampere, 7.0 * minute}};
    const std::vector<std::pair<Duration, Power>> steps{{{}, 745.0 * watt}};
    const auto early = run(unit_of(at_once), steps);
    const auto late = run(unit_of(stood), steps);
    ASSERT_GT(early.lasts, 1.0 * minute);
    EXPECT_EQ(early.limited_by, LimitedBy::pack_limit);
    EXPECT_NEAR((late.lasts - early.lasts) / second, 420.0, 1e-4);
    EXPECT_LT(late.ledger.relative_residual, 1e-11);
}

TEST(overload, an_instant_of_the_course_may_be_cut_anywhere) {
    std::vector<std::pair<Duration, Power>> cut{{{}, 50.0 * watt}};
    for (int i = 0; i < 200; ++i)
        cut.push_back({(1.0 + i / 200.0) * hour, long_pulse + (i % 2) * 1e-9 * watt});
    EXPECT_NEAR(run(unit_of(lithium()), cut).lasts / second, 5400.0, 1e-4);
}

// Alike in all but their leads: the one with the short lead carries more and is through first, the
// others then carry more than they stand at all.
TEST(overload, a_cascade_is_told_in_its_order_and_at_its_times) {
    auto near = lithium(0.001 * ohm);
    near.name = "near";
    auto far = lithium(0.006 * ohm);
    far.name = "far";
    const auto course = run(unit_of(far, {near}), {{{}, 50.0 * watt}, {1.0 * hour, 2300.0 * watt}});
    ASSERT_EQ(course.events.size(), 4u);
    EXPECT_EQ(course.events[0].kind, EventKind::one_over_current);
    EXPECT_EQ(course.events[0].pack, 1u);
    EXPECT_NEAR(course.events[0].at / hour, 1.5, 1e-8);
    EXPECT_NEAR(course.events[0].after / minute, 30.0, 1e-6);
    EXPECT_GT(course.events[0].current, 100.0 * ampere);
    EXPECT_LT(course.events[0].current, 120.0 * ampere);
    EXPECT_EQ(course.events[1].kind, EventKind::packs_over_current);
    EXPECT_EQ(course.events[1].at, course.events[0].at);
    EXPECT_EQ(course.events[1].after, Duration{});
    EXPECT_GT(course.events[1].current, 200.0 * ampere);
    // the load is gone then, and both close
    EXPECT_EQ(course.events[2].kind, EventKind::one_back);
    EXPECT_EQ(course.events[3].kind, EventKind::one_back);
    EXPECT_EQ(course.events[3].at, course.events[0].at);
    EXPECT_EQ(course.limited_by, LimitedBy::pack_limit);
    EXPECT_LT(course.ledger.relative_residual, 1e-10);
}

TEST(overload, alike_packs_written_as_unlike_open_at_the_same_moment) {
    auto twin = lithium();
    auto other = lithium();
    other.rated = 101.0 * ampere_hour;
    const std::vector<std::pair<Duration, Power>> steps{{{}, 50.0 * watt},
                                                        {1.0 * hour, 2.0 * long_pulse}};
    twin.count = 2;
    const auto together = run(unit_of(twin), steps);
    twin.count = 1;
    const auto apart = run(unit_of(twin, {other}), steps);
    EXPECT_NEAR(apart.lasts / second, together.lasts / second, 1e-3);
}

// ---- Fuses.

// [strip 51 mm of fuses.toml]: 100 % 14,400 s, 135 % 120 s, 200 % 1 s at the earliest.
outage::Bank fused() {
    auto bank = lithium();
    bank.current_limit.reset();
    bank.pulse.clear();
    bank.fuse = 80.0 * ampere;
    bank.fuse_opens = wiring::envelope_of(*wiring::find_fuse_family("strip 51 mm"), *bank.fuse);
    return bank;
}

TEST(overload, a_fuse_opens_at_its_earliest_and_stays_open) {
    // 1,320 W: the earliest opening by hand at the currents of the first and the last second
    const auto course = run(unit_of(fused()), {{{}, 50.0 * watt}, {1.0 * hour, 1320.0 * watt}});
    ASSERT_EQ(course.limited_by, LimitedBy::fuse);
    const double ratio = course.events.back().current / (80.0 * ampere);
    const double along = std::log(ratio / 1.35) / std::log(2.0 / 1.35);
    const double by_hand =
        ratio > 1.35 ? 120.0 * std::pow(1.0 / 120.0, along)
                     : 14400.0 * std::pow(120.0 / 14400.0, std::log(ratio) / std::log(1.35));
    EXPECT_NEAR((course.lasts - 1.0 * hour) / second, by_hand, 0.02 * by_hand);
    EXPECT_EQ(course.events.back().kind, EventKind::fuse_opens);
    EXPECT_NEAR(course.without / hour, 4.0 - course.lasts / hour, 1e-9);
}

// Against the same draw looked at every second, the current rising all the while: never later, and
// by no more than the method says earlier.
TEST(overload, a_fuse_is_looked_at_often_enough_as_its_current_rises) {
    auto bank = fused();
    bank.setup.kinetics.total = 400.0 * ampere_hour;
    bank.usable = bank.rated = 400.0 * ampere_hour;
    for (const double watts : {1150.0, 1200.0, 1300.0}) {
        std::vector<std::pair<Duration, Power>> cut;
        for (int i = 0; i < 4 * 3600; ++i)
            cut.push_back({static_cast<double>(i) * second, (watts + (i % 2) * 1e-9) * watt});
        const auto whole = run(unit_of(bank), {{{}, watts * watt}});
        const auto closely = run(unit_of(bank), cut);
        ASSERT_EQ(whole.limited_by, LimitedBy::fuse);
        ASSERT_EQ(closely.limited_by, LimitedBy::fuse);
        EXPECT_GT(closely.lasts, 2.0 * minute);
        EXPECT_LE(whole.lasts / second, closely.lasts / second + 1.0);
        EXPECT_GE(whole.lasts, 0.985 * closely.lasts) << watts;
    }
}

TEST(overload, a_fuse_whose_times_are_not_known_opens_at_its_rating) {
    auto bank = fused();
    bank.fuse_opens.clear();
    const auto course = run(unit_of(bank), {{{}, 50.0 * watt}, {1.0 * hour, 1320.0 * watt}});
    EXPECT_EQ(course.limited_by, LimitedBy::fuse);
    EXPECT_EQ(course.lasts, 1.0 * hour);
}

TEST(overload, a_warm_fuse_remembers_for_a_quarter_of_an_hour) {
    // two thirds of its time, a pause, two thirds more
    const auto once = run(unit_of(fused()), {{{}, 50.0 * watt}, {1.0 * hour, 1320.0 * watt}});
    const Duration part = 0.67 * (once.lasts - 1.0 * hour);
    const auto twice = [&](Duration pause) {
        return run(unit_of(fused()), {{{}, 50.0 * watt},
                                      {1.0 * hour, 1320.0 * watt},
                                      {1.0 * hour + part, 50.0 * watt},
                                      {1.0 * hour + part + pause, 1320.0 * watt},
                                      {1.0 * hour + 2.0 * part + pause, 50.0 * watt}});
    };
    EXPECT_EQ(twice(5.0 * minute).limited_by, LimitedBy::fuse);
    EXPECT_TRUE(twice(20.0 * minute).survives);
}

TEST(overload, the_fuse_in_a_packs_own_circuit_counts_with_its_times) {
    const auto read = scenario::read_scenario(R"(format = 1
title = "Fused"
[outage]
starts = 2027-01-12T18:00:00
lasts = "4 h"
[[pack]]
name = "main"
chemistry = "lifepo4"
capacity = "100 Ah"
fuse = "125 A"
[[circuit]]
name = "lead of main"
feeds = ["main"]
links = [{wire = "4 AWG", length = "2 ft", insulation = "105 degC"}, {fuse = "100 A", family = "strip 51 mm"}]
)",
                                              "fused.toml");
    ASSERT_TRUE(read.has_value());
    scenario::Assumptions assumptions;
    Errors errors;
    const auto built = unit::built(read->scenario, {.packs = celsius(20.0)}).value();
    const auto kinds = outage::kinds_of(built, assumptions, errors);
    ASSERT_EQ(kinds.size(), 1u);
    EXPECT_EQ(kinds.front().fuse->rating, 100.0 * ampere);
    EXPECT_EQ(kinds.front().fuse->opens.size(), 5u);
}

// ---- What charges the packs goes through their fuses too.

// Half empty, behind a 15 A fuse that opens at 4 times its rating after 2 s at the earliest.
outage::Bank behind_a_small_fuse() {
    auto bank = lithium();
    bank.fuse = 15.0 * ampere;
    bank.fuse_opens = {{1.1, 360'000.0 * second, std::nullopt},
                       {2.0, 60.0 * second, std::nullopt},
                       {4.0, 2.0 * second, 20.0 * second}};
    bank.at_start = battery::rested(bank.setup.kinetics, StateOfCharge(0.5));
    bank.setup.charging = {.largest = 60.0 * ampere};
    return bank;
}

outage::Course charged(const outage::Unit& unit, Power offered) {
    const std::vector<demand::DemandStep> demand{{.direct = 0.0 * watt}};
    const std::vector<outage::SunChange> sun{{.from = {}},
                                             {.from = 1.0 * hour, .offered = offered}};
    return outage::run(unit, demand, sun, 4.0 * hour, 6.0 * hour);
}

TEST(charging, a_fuse_opens_on_what_charges_its_pack_at_its_earliest_time) {
    // 60 A at some 13.9 V: four times the rating, so 2 s
    const auto course = charged(unit_of(behind_a_small_fuse()), 1200.0 * watt);
    ASSERT_EQ(course.limited_by, LimitedBy::fuse);
    EXPECT_NEAR(course.lasts / second, 3600.0 + 2.0, 0.1);
    EXPECT_NEAR(course.events.back().current / ampere, -60.0, 0.5);
    // nothing flows behind it, and the ledger still closes
    EXPECT_LT(course.ledger.sun_stored / (60.0 * ampere * 14.0 * volt), (2.5 * second));
    EXPECT_LT(course.ledger.relative_residual, 1e-11);
    // a warm case takes its part: half the rating opens at twice the multiple
    auto warm = behind_a_small_fuse();
    warm.setup.charging.largest = 30.0 * ampere;
    EXPECT_NEAR(charged(unit_of(warm), 1200.0 * watt).lasts / second, 3660.0, 1.5);
    warm.fuse_kept = 0.5;
    EXPECT_NEAR(charged(unit_of(warm), 1200.0 * watt).lasts / second, 3602.0, 0.1);
}

TEST(charging, what_the_fuse_bears_goes_on) {
    auto bank = behind_a_small_fuse();
    EXPECT_TRUE(charged(unit_of(bank), 200.0 * watt).survives);
    bank.setup.charging.largest = 16.0 * ampere;
    EXPECT_TRUE(charged(unit_of(bank), 1200.0 * watt).survives);
    // of a fuse with no known curve the rating counts at once
    bank.fuse_opens.clear();
    EXPECT_NEAR(charged(unit_of(bank), 1200.0 * watt).lasts / second, 3600.0, 1e-3);
}

TEST(charging, of_packs_that_differ_the_small_fuse_opens_and_the_others_are_charged_on) {
    auto strong = behind_a_small_fuse();
    strong.fuse = 100.0 * ampere;
    const auto course = charged(unit_of(strong, {behind_a_small_fuse()}), 1600.0 * watt);
    const auto opens =
        std::ranges::find(course.events, EventKind::one_fuse_opens, &outage::Event::kind);
    ASSERT_NE(opens, course.events.end());
    EXPECT_EQ(opens->pack, 1U);
    EXPECT_LT(opens->current, Current{});
    EXPECT_TRUE(course.survives);
    EXPECT_GT(course.ledger.sun_stored / (60.0 * ampere * 13.0 * volt), 0.5 * hour);
    EXPECT_LT(course.ledger.relative_residual, 1e-9);
}

// 1,000 W at the inverter's terminals draws some 78 A: through a 40 A fuse, nearly twice.
TEST(main_fuse, opens_by_its_own_curve_and_the_bus_goes_on) {
    auto unit = unit_of(lithium());
    scenario::Assumptions told;
    unit.inverter = inverter::model_of({.continuous = 2000.0 * watt}, 12.8 * volt, told).value();
    unit.main_fuse = outage::MainFuse{.rating = 40.0 * ampere,
                                      .opens = {{1.1, 360'000.0 * second, std::nullopt},
                                                {1.5, 600.0 * second, std::nullopt},
                                                {3.0, 5.0 * second, std::nullopt}}};
    const std::vector<demand::DemandStep> demand{
        {.direct = 10.0 * watt, .direct_useful = 10.0 * watt, .inverter_on = true},
        {.from = 1.0 * hour,
         .ac = 900.0 * watt,
         .direct = 10.0 * watt,
         .direct_useful = 10.0 * watt,
         .inverter_on = true}};
    const auto course = outage::run(unit, demand, {}, 3.0 * hour, 6.0 * hour);
    EXPECT_EQ(course.limited_by, LimitedBy::fuse);
    const auto opens =
        std::ranges::find(course.events, EventKind::main_fuse_opens, &outage::Event::kind);
    ASSERT_NE(opens, course.events.end());
    EXPECT_GT(opens->at, 1.0 * hour + 5.0 * second);
    EXPECT_LT(opens->at, 1.0 * hour + 600.0 * second);
    EXPECT_EQ(course.trace.back().served, 10.0 * watt);
    EXPECT_LT(course.ledger.relative_residual, 1e-11);
    // a fuse that bears it stays
    unit.main_fuse->rating = 150.0 * ampere;
    EXPECT_TRUE(outage::run(unit, {demand.data(), 2}, {}, 1.5 * hour, 6.0 * hour).survives);
}

// ---- Days of their own temperature.

outage::BankOfDay as_it_is(const outage::Bank& bank) {
    return {.inner = bank.setup.inner,
            .reachable = bank.setup.reachable,
            .charging = bank.setup.charging,
            .current_limit = bank.current_limit,
            .pulse = bank.pulse};
}

TEST(days, a_cold_morning_finds_packs_empty_that_were_not) {
    auto unit = unit_of(lithium());
    auto cold = as_it_is(unit.bank);
    cold.reachable = Share(0.7);
    unit.days = {{.from = {}, .banks = {as_it_is(unit.bank)}},
                 {.from = 2.0 * hour, .banks = {cold}}};
    // 40 % are out by then, and a rest of 60 %, of which 30 % are locked in, goes on
    const auto course = run(unit, {{{}, 260.0 * watt}});
    EXPECT_EQ(course.limited_by, LimitedBy::charge);
    const auto warm = run(unit_of(lithium()), {{{}, 260.0 * watt}});
    EXPECT_TRUE(warm.survives);
    EXPECT_LT(course.lasts, warm.lasts);
    EXPECT_GT(course.lasts, 2.0 * hour);
    cold.reachable = Share(0.5);
    unit.days.back().banks = {cold};
    EXPECT_EQ(run(unit, {{{}, 360.0 * watt}}).lasts, 2.0 * hour);
    EXPECT_LT(run(unit, {{{}, 360.0 * watt}}).ledger.relative_residual, 1e-11);
}

TEST(days, unlike_packs_follow_them_as_alike_ones_do) {
    auto bank = lithium();
    bank.count = 2;
    auto together = unit_of(bank);
    bank.count = 1;
    auto second = bank;
    second.rated = 101.0 * ampere_hour;
    auto apart = unit_of(bank, {second});
    auto cold = as_it_is(bank);
    cold.reachable = Share(0.7);
    cold.inner = 0.025 * ohm;
    for (auto* unit : {&together, &apart}) {
        unit->days = {{.from = {}, .banks = {as_it_is(bank)}},
                      {.from = 2.0 * hour, .banks = {cold}}};
        for (auto& day : unit->days)
            day.banks.resize(1 + unit->others.size(), day.banks.front());
    }
    const std::vector<std::pair<Duration, Power>> steps{{{}, 560.0 * watt}};
    const auto a = run(together, steps);
    const auto b = run(apart, steps);
    ASSERT_FALSE(a.survives);
    EXPECT_NEAR(a.lasts / units::second, b.lasts / units::second, 1.0);
}

}  // namespace
