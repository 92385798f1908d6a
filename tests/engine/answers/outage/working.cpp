#include "answers/outage/working.hpp"

#include <algorithm>

#include <gtest/gtest.h>

#include "support/made_plan.hpp"

namespace {

using namespace answers;

double value_of(const std::vector<WorkingRow>& rows, std::string_view what) {
    const auto row = std::ranges::find(rows, what, &WorkingRow::quantity);
    EXPECT_NE(row, rows.end()) << what;
    return row == rows.end() ? -1.0 : row->value.value;
}

// 96 h of 100 W lose 11 Wh each in the inverter, half of it with nothing plugged in: 1056, 528 and
// as much for the conversion. Four days of 6 h of 300 W offer 7200 Wh.
TEST(outage_working, the_account_of_a_plan_that_lasts_adds_up_by_hand) {
    const auto rows = outage_working(made::lasting_plan());
    EXPECT_NEAR(value_of(rows, "to the loads"), 9600.0, 1e-6);
    EXPECT_NEAR(value_of(rows, "lost in the inverter"), 1056.0, 1e-6);
    EXPECT_NEAR(value_of(rows, "that draw over the hours it is on"), 528.0, 1e-6);
    EXPECT_NEAR(value_of(rows, "conversion"), 528.0, 1e-6);
    EXPECT_NEAR(value_of(rows, "offered at the battery"), 7200.0, 1e-6);
}

// 5900 Wh of 7375 Wh are four fifths.
TEST(outage_working, each_load_tells_its_share_of_all) {
    auto plan = made::plan();
    auto& first = plan.loads.front();
    plan.loads.push_back(first);
    plan.loads.back().name = "pump";
    plan.loads.back().wanted = 1475.0 * units::watt_hour;
    const auto rows = outage_working(plan);
    EXPECT_NEAR(value_of(rows, "refrigerator, a mean day, 80 % of all loads"), 1475.0, 1e-9);
    EXPECT_NEAR(value_of(rows, "refrigerator while on (AC), 55 W to 67 W"), 61.0, 1e-9);
}

}  // namespace
