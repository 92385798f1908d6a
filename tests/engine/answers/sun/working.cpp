#include "answers/sun/working.hpp"

#include <algorithm>

#include <gtest/gtest.h>

namespace {

using namespace answers;
using namespace units;

double value_of(const std::vector<WorkingRow>& rows, std::string_view what) {
    const auto row = std::ranges::find(rows, what, &WorkingRow::quantity);
    EXPECT_NE(row, rows.end()) << what;
    return row == rows.end() ? -1.0 : row->value.value;
}

// 10 kWh/m2 above the air at a clearness of 0.45 are 4.5 on the ground. 600 Wh over two days are
// 300 a day.
TEST(sun_working, the_ground_gets_its_clearness_of_what_is_outside) {
    scenario::Scenario scenario;
    scenario.outage.lasts = 2.0 * day;
    questions::SunResults results;
    results.setup.groups.resize(1);
    results.cells_in_full_sun = {celsius(31.25)};
    results.place = {.declination = -21.3 * degree,
                     .above_horizon = 9.5 * hour,
                     .outside = 10.0 * kilowatt_hour_per_square_metre,
                     .clearness = solar::Clearness(0.45)};
    results.recharge.whole.mean = 600.0 * watt_hour;
    const auto rows = sun_working(scenario, results);
    const double outside = value_of(rows, "level ground outside the air, the day");
    EXPECT_NEAR(value_of(rows, "level ground, mean day of the month") / outside, 0.45, 1e-12);
    EXPECT_NEAR(value_of(rows, "sun above the horizon"), 9.5, 1e-9);
    EXPECT_NEAR(value_of(rows, "cells in full sun and 0 °C of air"), 31.25, 1e-9);
    EXPECT_NEAR(value_of(rows, "the mean, for each day"), 300.0, 1e-9);
}

TEST(sun_working, without_panels_there_is_nothing_to_work_out) {
    EXPECT_TRUE(sun_working({}, {}).empty());
}

}  // namespace
