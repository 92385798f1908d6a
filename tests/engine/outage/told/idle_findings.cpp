#include "outage/told/idle_findings.hpp"

#include <gtest/gtest.h>

#include "support/planned_loads.hpp"

namespace {

using planned_loads::finding;
using planned_loads::load;
using planned_loads::with;
using scenario::Finding;
using scenario::Outlet;
using units::day;
using units::Duration;
using units::hour;
using units::watt;

// A course of two days in whose first hours the inverter ran.
outage::Course running_for(Duration runs) {
    outage::Course course;
    for (int quarter = 0; quarter < 4 * 48; ++quarter) {
        const Duration from = 0.25 * quarter * hour;
        const Duration to = from + 0.25 * hour;
        const Duration ran = std::clamp(runs - from, Duration{}, 0.25 * hour);
        course.intervals.push_back({.from = from, .to = to, .flows = {.idle = 18.0 * watt * ran}});
    }
    return course;
}

scenario::Findings findings(const scenario::Scenario& scenario, Duration runs) {
    scenario::Assumptions assumed;
    const auto model = inverter::model_of(*scenario.inverter, 12.8 * units::volt, assumed).value();
    return outage::idle_findings(demand::plan_demand(scenario).value(), model, running_for(runs));
}

TEST(idle_findings, an_inverter_kept_on_for_a_small_load_is_told_in_numbers) {
    // 12 W for 48 h is 576 Wh; 18 W idle for 48 h is 864 Wh.
    const auto all = findings(with({load("router", 12)}), 48.0 * hour);
    const Finding* const found = finding(all, "only for router");
    ASSERT_TRUE(found);
    EXPECT_NE(in_english(found->text).find("864 Wh"), std::string::npos) << found->text;
    EXPECT_NE(in_english(found->text).find("576 Wh"), std::string::npos) << found->text;
}

// 12 W for 8 h 20 min is 100 Wh; 18 W for it is 150 Wh, not the 864 Wh of the plan.
TEST(idle_findings, only_the_hours_that_the_supply_lasted_are_told) {
    const auto all = findings(with({load("router", 12)}), hour * (25.0 / 3.0));
    const Finding* const found = finding(all, "only for router");
    ASSERT_TRUE(found);
    EXPECT_NE(in_english(found->text).find("150 Wh"), std::string::npos) << found->text;
    EXPECT_NE(in_english(found->text).find("100 Wh"), std::string::npos) << found->text;
    EXPECT_TRUE(findings(with({load("router", 12)}), Duration{}).empty());
}

TEST(idle_findings, a_small_load_beside_a_refrigerator_costs_no_idle_of_its_own) {
    const auto all = findings(with({load("router", 12), load("fridge", 61)}), 48.0 * hour);
    EXPECT_FALSE(finding(all, "only for"));
}

TEST(idle_findings, an_inverter_on_for_nothing_is_told_in_numbers) {
    const auto all = findings(with({load("lamp", 5, Outlet::twelve_volt)}), 48.0 * hour);
    const Finding* const found = finding(all, "nothing to feed");
    ASSERT_TRUE(found);
    EXPECT_NE(in_english(found->text).find("864 Wh"), std::string::npos) << found->text;
    EXPECT_TRUE(findings(with({load("lamp", 5, Outlet::twelve_volt)}), 0.5 * hour).empty());
}

TEST(idle_findings, in_search_mode_it_is_not_kept_on) {
    scenario::Scenario scenario = with({load("router", 12)});
    scenario.inverter->search_threshold = 20.0 * watt;
    EXPECT_TRUE(findings(scenario, 48.0 * hour).empty());
}

}  // namespace
