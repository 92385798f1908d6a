#include "outage/told/account.hpp"

#include <array>
#include <filesystem>

#include "battery/cell/chemistry.hpp"
#include "outage/clock/clock.hpp"
#include "outage/plan.hpp"
#include "scenario/file/read.hpp"

namespace {

using namespace units;

// A lithium pack of 100 Ah that nothing but its charge limits, without an inverter.
outage::Unit pack_alone() {
    outage::Unit unit;
    unit.bank.setup = {
        .kinetics = {.total = 100.0 * ampere_hour},
        .open_circuit = &battery::open_circuit_of(scenario::Chemistry::lifepo4),
        .inner = 0.010 * ohm,
        .path = 0.002 * ohm,
        .charging = {
            .largest = 50.0 * ampere, .absorption = 14.4 * volt, .coulombic = Efficiency(0.995)}};
    unit.bank.rated = unit.bank.usable = 100.0 * ampere_hour;
    return unit;
}

demand::DemandStep direct(Duration from, Power power) {
    return {.from = from, .direct = power, .direct_useful = power};
}

double served_in(const outage::Interval& interval) {
    return interval.flows.loads / watt_hour;
}

// By hand: 200 W from 18:20 to 19:50 is 40 min, 50 min and nothing of the hours that begin at
// 18:00, 19:00 and 20:00: 133.33, 166.67 and 0 Wh.
TEST(account, an_hour_holds_what_flowed_in_it_and_no_ramp_towards_it) {
    const std::vector demand{direct({}, {}), direct(20.0 * minute, 200.0 * watt),
                             direct(110.0 * minute, {})};
    const auto course =
        outage::run(pack_alone(), demand, {}, 3.0 * hour, 6.0 * hour, {.intervals = 1.0 * hour});
    ASSERT_EQ(course.intervals.size(), 3U);
    EXPECT_NEAR(served_in(course.intervals[0]), 200.0 * 40.0 / 60.0, 1e-9);
    EXPECT_NEAR(served_in(course.intervals[1]), 200.0 * 50.0 / 60.0, 1e-9);
    EXPECT_DOUBLE_EQ(served_in(course.intervals[2]), 0.0);
}

// One leg over many hours is cut at each of them: 24 Wh an hour, and every hour by itself closes.
TEST(account, a_leg_over_many_hours_is_parted_at_each) {
    const std::vector demand{direct({}, 24.0 * watt)};
    const auto course =
        outage::run(pack_alone(), demand, {}, 10.5 * hour, 6.0 * hour, {.intervals = 1.0 * hour});
    ASSERT_EQ(course.intervals.size(), 11U);
    for (std::size_t i = 0; i < 11; ++i) {
        const auto& interval = course.intervals[i];
        EXPECT_NEAR(served_in(interval), i < 10 ? 24.0 : 12.0, 1e-9);
        EXPECT_LT(interval.flows.relative_residual, 1e-12);
        if (i > 0) {
            EXPECT_EQ(interval.from, course.intervals[i - 1].to);
            EXPECT_EQ(interval.flows.stored_at_start, course.intervals[i - 1].flows.stored_at_end);
        }
    }
    EXPECT_EQ(course.intervals.back().to, 10.5 * hour);
    EXPECT_EQ(course.intervals.back().flows.stored_at_end, course.ledger.stored_at_end);
}

TEST(account, what_goes_without_is_wanted_and_not_served) {
    // 100 Ah of some 13 V and no more: 400 W are wanted for six hours.
    const std::vector demand{direct({}, 400.0 * watt)};
    const auto course =
        outage::run(pack_alone(), demand, {}, 6.0 * hour, 6.0 * hour, {.intervals = 1.0 * hour});
    const auto& last = course.intervals.back();
    EXPECT_DOUBLE_EQ(served_in(last), 0.0);
    EXPECT_NEAR(outage::wanted(last.flows) / watt_hour, 400.0, 1e-9);
}

TEST(account, keeping_intervals_does_not_touch_the_run) {
    const std::vector demand{direct({}, 150.0 * watt), direct(5.0 * hour, 40.0 * watt)};
    const std::vector<outage::SunChange> sun{{.from = {}, .offered = {}},
                                             {.from = 3.3 * hour, .offered = 120.0 * watt}};
    const auto plain = outage::run(pack_alone(), demand, sun, 60.0 * hour, 6.0 * hour);
    const auto kept =
        outage::run(pack_alone(), demand, sun, 60.0 * hour, 6.0 * hour, {.intervals = 0.25 * hour});
    EXPECT_EQ(plain.lasts, kept.lasts);
    EXPECT_EQ(plain.ledger.loads, kept.ledger.loads);
    EXPECT_EQ(plain.ledger.stored_at_end, kept.ledger.stored_at_end);
    EXPECT_TRUE(plain.intervals.empty());
}

TEST(joined, quarters_become_hours) {
    const std::vector demand{direct({}, 24.0 * watt)};
    const auto course =
        outage::run(pack_alone(), demand, {}, 2.25 * hour, 6.0 * hour, {.intervals = 0.25 * hour});
    ASSERT_EQ(course.intervals.size(), 9U);
    const auto hours = outage::joined(course.intervals, 1.0 * hour);
    ASSERT_EQ(hours.size(), 3U);
    EXPECT_NEAR(served_in(hours[0]), 24.0, 1e-9);
    EXPECT_NEAR(served_in(hours[2]), 6.0, 1e-9);
    EXPECT_EQ(hours[1].flows.stored_at_end, course.intervals[7].flows.stored_at_end);
    EXPECT_EQ(hours[2].to, 2.25 * hour);
}

// Every shipped scenario: the hours of its plan sum to the ledger, entry by entry.
TEST(account, the_hours_of_every_shipped_scenario_sum_to_the_ledger) {
    double worst = 0.0;
    int scenarios = 0;
    for (const auto& entry :
         std::filesystem::directory_iterator(CANDLEMARK_SOURCE_DIR "/scenarios")) {
        if (entry.path().extension() != ".toml") continue;
        const auto read = scenario::read_scenario_file(entry.path().string());
        ASSERT_TRUE(read) << entry.path();
        const auto plan = outage::plan_outage(read->scenario, entry.path().parent_path().string());
        if (!plan) continue;
        ++scenarios;
        for (const outage::Course* course :
             std::array{&plan->earliest, &plan->likely, &plan->latest}) {
            outage::Ledger sum;
            for (const auto& interval : outage::joined(course->intervals, 1.0 * hour)) {
                add(sum, interval.flows);
                EXPECT_LT(interval.flows.relative_residual, 1e-9) << entry.path();
            }
            for (const auto flow : outage::flows_in_ledger) {
                const double total = course->ledger.*flow / watt_hour;
                const double off = std::abs(sum.*flow / watt_hour - total) / std::max(1.0, total);
                worst = std::max(worst, off);
                EXPECT_LT(off, 1e-9) << entry.path();
            }
        }
    }
    EXPECT_GE(scenarios, 5);
    std::printf("hours against ledger, %d scenarios: %.1e\n", scenarios, worst);
}

}  // namespace
