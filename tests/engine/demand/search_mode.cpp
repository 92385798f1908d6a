#include "demand/search_mode.hpp"

#include <gtest/gtest.h>

#include "outage/plan.hpp"
#include "support/planned_loads.hpp"

namespace {

using planned_loads::load;
using scenario::Severity;
using units::day;
using units::Duration;
using units::hour;
using units::Power;
using units::watt;
using units::watt_hour;

// An inverter of 20 W idle and a threshold of 20 W, for a day from 18:00.
scenario::Scenario with(std::vector<scenario::Load> loads) {
    auto scenario = planned_loads::with(std::move(loads));
    scenario.outage.lasts = 1.0 * day;
    scenario.inverter->continuous = 2000.0 * watt;
    scenario.inverter->idle = 20.0 * watt;
    scenario.inverter->search_threshold = 20.0 * watt;
    scenario.packs.emplace_back().capacity = 100.0 * units::ampere_hour;
    return scenario;
}

TEST(search_mode, a_router_below_the_threshold_never_wakes_it) {
    const auto scenario = with({load("router", 14)});
    const auto demand = demand::plan_demand(scenario).value();
    const auto steps = demand::demand_steps(demand, demand::Case::likely);
    ASSERT_EQ(steps.size(), 1u);
    EXPECT_TRUE(steps[0].asleep);
    EXPECT_TRUE(steps[0].inverter_on);
    EXPECT_EQ(steps[0].ac, Power{});
    EXPECT_EQ(outage::load_uses(demand)[0].wanted, units::Energy{});
    const auto found = demand::search_mode_findings(scenario, demand);
    ASSERT_EQ(found.size(), 1u);
    EXPECT_EQ(found[0].severity, Severity::caution);
    EXPECT_NE(in_english(found[0].text).find("gets nothing for 24 h"), std::string::npos)
        << found[0].text;
}

// A lamp of 60 W from 20 to 22 h wakes it, and the router beside it is fed then.
TEST(search_mode, beside_something_larger_it_is_fed) {
    auto lamp = load("lamp", 60);
    lamp.hours = {{.from = 20.0 * hour, .until = 22.0 * hour}};
    const auto demand = demand::plan_demand(with({load("router", 14), lamp})).value();
    const auto steps = demand::demand_steps(demand, demand::Case::likely);
    ASSERT_EQ(steps.size(), 3u);
    EXPECT_TRUE(steps[0].asleep);
    EXPECT_FALSE(steps[1].asleep);
    EXPECT_NEAR(steps[1].ac / watt, 74.0, 1e-12);
    EXPECT_TRUE(steps[2].asleep);
    EXPECT_NEAR(outage::load_uses(demand)[0].wanted / watt_hour, 28.0, 1e-9);
}

TEST(search_mode, two_that_reach_it_together_wake_it) {
    const auto demand = demand::plan_demand(with({load("router", 14), load("radio", 6)})).value();
    EXPECT_FALSE(demand::demand_steps(demand, demand::Case::likely)[0].asleep);
    EXPECT_TRUE(demand.loads[0].unwoken.empty());
}

TEST(search_mode, what_is_medical_and_not_fed_stops) {
    auto breathing = load("CPAP", 14);
    breathing.medical = true;
    const auto scenario = with({breathing});
    EXPECT_EQ(
        demand::search_mode_findings(scenario, demand::plan_demand(scenario).value())[0].severity,
        Severity::stop);
}

TEST(search_mode, a_draw_that_may_reach_the_threshold_may_wake_it) {
    auto lamp = load("lamp", 18);
    lamp.evidence = scenario::Evidence::label;
    const auto scenario = with({lamp});
    const auto found =
        demand::search_mode_findings(scenario, demand::plan_demand(scenario).value());
    EXPECT_NE(in_english(found[0].text).find("may not wake"), std::string::npos) << found[0].text;
}

// Asleep for 24 h at 4 W, by hand: 96 Wh, and nothing to the router.
TEST(search_mode, asleep_it_takes_little_and_feeds_nothing) {
    const auto plan = outage::plan_outage(with({load("router", 14)}), ".").value();
    EXPECT_NEAR(plan.likely.ledger.idle / watt_hour, 96.0, 1e-6);
    EXPECT_EQ(plan.likely.ledger.loads, units::Energy{});
    EXPECT_EQ(plan.likely.ledger.unserved, units::Energy{});
}

TEST(search_mode, without_it_nothing_sleeps) {
    auto scenario = with({load("router", 14)});
    scenario.inverter->search_threshold.reset();
    const auto demand = demand::plan_demand(scenario).value();
    EXPECT_FALSE(demand::demand_steps(demand, demand::Case::likely)[0].asleep);
    EXPECT_TRUE(demand::search_mode_findings(scenario, demand).empty());
}

}  // namespace
