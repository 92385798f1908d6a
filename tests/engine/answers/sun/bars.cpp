#include "answers/sun/bars.hpp"

#include <gtest/gtest.h>

namespace {

using namespace answers;
using namespace units;

const LocalTime midnight = *read_local_time("2026-01-15");

// 100 W from 08:15 to 09:15 are 50 W over the half hour from 08:00, 100 W over the next and 50 W
// over the last; 100 Wh in all.
TEST(sun_bars, a_curve_is_the_mean_power_of_each_half_hour) {
    questions::SunDayCurves day{.midnight = midnight, .low = {}, .likely = {}, .high = {}};
    day.likely = {
        {.start = midnight + 8.25 * hour, .duration = 1.0 * hour, .offered = 100.0 * watt}};
    const auto curves = sun_curves(day);
    ASSERT_EQ(curves.curves.size(), 3U);
    const auto& likely = curves.curves[1];
    ASSERT_EQ(likely.values.size(), 48U);
    EXPECT_NEAR(likely.values[16], 50.0, 1e-6);
    EXPECT_NEAR(likely.values[17], 100.0, 1e-6);
    EXPECT_NEAR(likely.values[18], 50.0, 1e-6);
    EXPECT_EQ(likely.values[19], 0.0);
    EXPECT_EQ(likely.words, "100 Wh");
    EXPECT_EQ(curves.at[17], 8.5);
}

// 1500 Wh over three days are 500 Wh a day.
TEST(sun_bars, a_count_of_panels_gives_what_a_day_of_the_outage_brings) {
    scenario::Scenario scenario;
    scenario.outage.lasts = 3.0 * day;
    scenario.panels = {{.count = 2}};
    questions::SunResults results;
    results.setup.groups.resize(1);
    results.unit = questions::SunAndUnit{};
    results.unit->counts.resize(3);
    results.unit->counts[2].panels = 2;
    results.unit->counts[2].sun.kept.likely = 1500.0 * watt_hour;
    const auto charts = sun_bars(scenario, results);
    ASSERT_EQ(charts.size(), 3U);
    EXPECT_EQ(charts[2].bars[2].label, "2 panels");
    EXPECT_NEAR(charts[2].bars[2].likely, 500.0, 1e-9);
    EXPECT_TRUE(charts[2].bars[2].chosen);
}

}  // namespace
