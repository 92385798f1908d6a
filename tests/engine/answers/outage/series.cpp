#include "answers/outage/series.hpp"

#include <numeric>

#include <fmt/format.h>

#include "scenario/file/read.hpp"
#include "support/made_plan.hpp"

namespace {

using namespace answers;
using testing::Each;
using testing::Ge;
using testing::Le;

const Series& named(const std::vector<Series>& all, std::string_view name) {
    return *std::ranges::find(all, name, &Series::name);
}

const std::vector<double>& numbers(const Series& series, std::string_view name) {
    return std::get<std::vector<double>>(
        std::ranges::find(series.columns, name, &Column::name)->points);
}

TEST(outage_series, hours_come_first_because_csv_prints_the_first) {
    EXPECT_EQ(outage_series(made::scenario(), made::plan()).front().name, "hours");
}

TEST(outage_series, a_part_of_an_hour_at_the_end_has_a_row_of_its_own) {
    auto plan = made::plan();
    for (auto* course : {&plan.likely, &plan.earliest, &plan.latest}) {
        course->intervals.resize(2);
        course->intervals.back().to = 90.0 * units::minute;
        course->intervals.back().flows.loads = 50.0 * units::watt_hour;
    }
    const auto series = outage_series(made::scenario(), plan);
    EXPECT_EQ(numbers(series.front(), "stored").size(), 2U);
    EXPECT_NEAR(numbers(series.front(), "wanted").back(), 100.0, 1e-9);  // 50 Wh in half an hour
}

TEST(outage_series, the_last_row_holds_what_is_stored_at_the_end) {
    const auto plan = made::plan();
    const auto series = outage_series(made::scenario(), plan);
    EXPECT_NEAR(numbers(series.front(), "stored").back(),
                plan.likely.ledger.stored_at_end / units::watt_hour, 1e-9);
}

TEST(outage_series, charge_is_in_percent) {
    const auto series = outage_series(made::scenario(), made::plan());
    EXPECT_NEAR(numbers(series.front(), "charge").front(), 100.0 * (3000.0 - 111.0) / 12000.0,
                1e-9);
}

TEST(outage_series, each_load_has_a_row) {
    const auto series = outage_series(made::scenario(), made::plan());
    EXPECT_EQ(numbers(named(series, "loads"), "per_day"), std::vector<double>{1475.0});
}

// 100 W for 96 hours by hand, and an hour's balance: 3000 Wh less 100 and 11.
TEST(days_chart, an_hour_is_a_balance) {
    const auto chart = days_chart(made::scenario(), made::plan());
    const auto& first = chart.hours.front();
    EXPECT_DOUBLE_EQ(first.stored_before, 3000.0);
    EXPECT_DOUBLE_EQ(first.wanted, 100.0);
    EXPECT_DOUBLE_EQ(first.served, 100.0);
    EXPECT_DOUBLE_EQ(first.lost, 11.0);
    EXPECT_DOUBLE_EQ(first.stored, 3000.0 - 111.0);
    for (const auto& hour : chart.hours)
        EXPECT_NEAR(
            hour.stored_before + hour.sun_taken + hour.charger_taken - hour.served - hour.lost,
            hour.stored, 1e-9);
}

// Two loads of the second priority and one of the first, 10, 20 and 40 Wh in the first hour.
TEST(days_chart, an_hour_tells_what_each_priority_wants) {
    auto plan = made::plan();
    plan.loads.resize(3, plan.loads.front());
    const auto of = [&plan](std::size_t load, int priority, double energy) {
        plan.loads[load].priority = priority;
        plan.loads[load].hours = {energy * units::watt_hour, {}};
    };
    of(0, 2, 10.0);
    of(1, 1, 40.0);
    of(2, 2, 20.0);
    const auto chart = days_chart(made::scenario(), plan);
    EXPECT_EQ(chart.priorities, (std::vector<int>{1, 2}));
    ASSERT_EQ(chart.hours[0].wanted_by.size(), 2U);
    EXPECT_NEAR(chart.hours[0].wanted_by[0], 40.0, 1e-9);
    EXPECT_NEAR(chart.hours[0].wanted_by[1], 30.0, 1e-9);
    EXPECT_NEAR(chart.hours[1].wanted_by[1], 0.0, 1e-9);
    EXPECT_NEAR(chart.hours[90].wanted_by[0], 0.0, 1e-9);
}

// The hours of the loads themselves against the clock's account of each hour.
TEST(days_chart, priorities_sum_to_what_the_account_of_the_hour_says_is_wanted) {
    for (const char* name : {"ice_storm", "breathing_at_night", "saw_and_pump"}) {
        const auto read = scenario::read_scenario_file(
            fmt::format("{}/scenarios/{}.toml", CANDLEMARK_SOURCE_DIR, name));
        ASSERT_TRUE(read) << name;
        const auto plan = outage::plan_outage(read->scenario, CANDLEMARK_SOURCE_DIR "/scenarios");
        ASSERT_TRUE(plan) << name;
        const auto chart = days_chart(read->scenario, *plan);
        for (const auto& hour : chart.hours)
            EXPECT_NEAR(std::accumulate(hour.wanted_by.begin(), hour.wanted_by.end(), 0.0),
                        hour.wanted, 1e-6 * (1.0 + hour.wanted))
                << name << ", hour " << hour.from;
    }
}

// 3000 Wh to begin with, of which 2400 may be used.
TEST(days_chart, packs_are_empty_where_no_more_may_be_used) {
    auto plan = made::plan();
    plan.usable_at_start = 2400.0 * units::watt_hour;
    EXPECT_DOUBLE_EQ(days_chart(made::scenario(), plan).empty, 600.0);
    plan.usable_at_start = 4000.0 * units::watt_hour;
    EXPECT_DOUBLE_EQ(days_chart(made::scenario(), plan).empty, 0.0);
}

TEST(days_chart, half_of_the_members_lie_between_a_quarter_and_three) {
    const auto without = days_chart(made::scenario(), made::plan());
    EXPECT_TRUE(without.three_in_four.empty());
    const auto fan = made::fan();
    const auto chart = days_chart(made::scenario(), made::plan(), fan);
    ASSERT_EQ(chart.three_in_four.size(), chart.at.size());
    ASSERT_EQ(chart.one_in_four.size(), chart.at.size());
    ASSERT_EQ(fan.at.size(), chart.at.size());
    for (std::size_t i = 0; i < chart.at.size(); ++i) {
        EXPECT_DOUBLE_EQ(chart.three_in_four[i], fan.stored[1][i] / units::watt_hour);
        EXPECT_DOUBLE_EQ(chart.one_in_four[i], fan.stored[3][i] / units::watt_hour);
    }
}

TEST(days_chart, curves_have_one_value_for_each_moment) {
    const auto chart = days_chart(made::scenario(), made::plan());
    EXPECT_EQ(chart.at.size(), 96U + 1U);
    EXPECT_EQ(chart.hours.size(), 96U);
    for (const auto* curve : {&chart.nine_in_ten, &chart.likely, &chart.one_in_ten}) {
        EXPECT_EQ(curve->size(), chart.at.size());
    }
    EXPECT_DOUBLE_EQ(chart.at.back(), 96.0);
    EXPECT_THAT(chart.likely, Each(Le(chart.top)));
}

TEST(days_chart, long_outages_keep_to_a_thousand_points) {
    auto plan = made::plan();
    for (auto* course : {&plan.likely, &plan.earliest, &plan.latest}) {
        for (int hour = 96; hour < 60 * 24; ++hour) {
            auto interval = course->intervals.back();
            interval.from = interval.to;
            interval.to += 1.0 * units::hour;
            course->intervals.push_back(interval);
        }
    }
    auto scenario = made::scenario();
    scenario.outage.lasts = 60.0 * units::day;
    const auto chart = days_chart(scenario, plan);
    EXPECT_LE(chart.at.size(), 1000U);
    EXPECT_DOUBLE_EQ(chart.at.back(), 60.0 * 24.0);
}

// Half are over by 12 h: after 24 h 24 in 100 are still out, after 48 h 8. By hand from a table of
// the normal distribution at ln 2 and at ln 4.
TEST(days_chart, an_outage_of_unknown_length_is_shown_until_most_are_over) {
    auto scenario = made::scenario();
    scenario.outage.open_ended = true;
    scenario.outage.half_over_by = 12.0 * units::hour;
    const auto chart = days_chart(scenario, made::plan());
    EXPECT_DOUBLE_EQ(chart.lasts, 48.0);
    EXPECT_DOUBLE_EQ(chart.at.back(), 48.0);
    EXPECT_EQ(chart.hours.size(), 48U);
    ASSERT_EQ(chart.still_out.size(), chart.at.size());
    EXPECT_DOUBLE_EQ(chart.still_out.front(), 1.0);
    EXPECT_NEAR(chart.still_out[24], 0.2441, 1e-4);
    EXPECT_NEAR(chart.still_out.back(), 0.0828, 1e-4);
    for (const auto& night : chart.nights)
        EXPECT_LE(night.to, 48.0);
    for (const auto& marker : chart.markers)
        EXPECT_LE(marker.at, 48.0);
}

TEST(days_chart, nothing_is_shown_long_after_the_units_have_ended) {
    auto scenario = made::scenario();
    scenario.outage.open_ended = true;
    scenario.outage.half_over_by = 12.0 * units::hour;
    EXPECT_DOUBLE_EQ(days_chart(scenario, made::plan(), {}, 20.0 * units::hour).lasts, 24.0);
    EXPECT_DOUBLE_EQ(days_chart(scenario, made::plan(), {}, 90.0 * units::hour).lasts, 48.0);
}

TEST(days_chart, a_known_length_is_shown_whole) {
    const auto chart = days_chart(made::scenario(), made::plan(), {}, 5.0 * units::hour);
    EXPECT_DOUBLE_EQ(chart.lasts, 96.0);
    EXPECT_TRUE(chart.still_out.empty());
}

TEST(days_chart, nights_lie_between_sunset_and_sunrise) {
    const auto chart = days_chart(made::scenario(), made::plan());
    ASSERT_EQ(chart.nights.size(), 5U);
    EXPECT_DOUBLE_EQ(chart.nights[0].from, 0.0);
    EXPECT_DOUBLE_EQ(chart.nights[0].to, 15.0);
    EXPECT_DOUBLE_EQ(chart.nights[1].from, 21.0);
    EXPECT_DOUBLE_EQ(chart.nights[1].to, 39.0);
    EXPECT_DOUBLE_EQ(chart.nights[4].to, 96.0);
}

TEST(days_chart, an_outage_that_begins_by_day_begins_without_a_night) {
    auto plan = made::plan();
    plan.likely.events = {{.at = 3.0 * units::hour, .kind = outage::EventKind::sunset},
                          {.at = 17.0 * units::hour, .kind = outage::EventKind::sunrise}};
    const auto chart = days_chart(made::scenario(), plan);
    ASSERT_EQ(chart.nights.size(), 1U);
    EXPECT_DOUBLE_EQ(chart.nights[0].from, 3.0);
    EXPECT_DOUBLE_EQ(chart.nights[0].to, 17.0);
}

TEST(days_chart, a_full_store_is_what_charge_and_energy_at_the_start_say) {
    EXPECT_NEAR(days_chart(made::scenario(), made::plan()).top, 12000.0, 1e-6);
}

TEST(days_chart, each_kind_of_event_is_marked_once) {
    auto plan = made::plan();
    plan.likely.events.clear();
    for (int time = 1; time <= 5; ++time) {
        plan.likely.events.push_back({.at = static_cast<double>(time) * units::hour,
                                      .kind = outage::EventKind::packs_empty});
    }
    EXPECT_EQ(days_chart(made::scenario(), plan).markers.size(), 1U);
}

}  // namespace
