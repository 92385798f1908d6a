#include "demand/demand.hpp"

#include <gtest/gtest.h>

#include "outage/told/load_uses.hpp"

namespace {

using demand::Case;
using demand::DemandStep;
using scenario::Outlet;
using units::day;
using units::hour;
using units::minute;
using units::watt;

scenario::Load load(std::string name, double power, Outlet from = Outlet::ac) {
    scenario::Load made;
    made.name = std::move(name);
    made.from = from;
    made.draw = scenario::StatedPower{power * watt};
    made.evidence = scenario::Evidence::guess;
    return made;
}

// Starts at 18:00 and lasts two days.
scenario::Scenario with(std::vector<scenario::Load> loads) {
    scenario::Scenario scenario;
    scenario.outage.starts = units::LocalTime(20'000.0 * day + 18.0 * hour);
    scenario.outage.lasts = 2.0 * day;
    scenario.inverter.emplace().continuous = 2400.0 * watt;
    scenario.loads = std::move(loads);
    return scenario;
}

std::vector<DemandStep> steps(const scenario::Scenario& scenario, Case which = Case::likely) {
    return demand::demand_steps(demand::plan_demand(scenario).value(), which);
}

TEST(demand, nothing_plugged_in_is_one_step_with_the_inverter_on) {
    EXPECT_EQ(steps(with({})), std::vector<DemandStep>{DemandStep{.inverter_on = true}});
}

TEST(demand, each_change_begins_a_step) {
    scenario::Load lamp = load("lamp", 10);
    lamp.hours = {{.from = 20.0 * hour, .until = 22.0 * hour}};
    const std::vector<DemandStep> found = steps(with({load("router", 12), lamp}));
    ASSERT_EQ(found.size(), 5U);
    EXPECT_EQ(found[0].ac, 12.0 * watt);
    EXPECT_EQ(found[1].from, 2.0 * hour);
    EXPECT_EQ(found[1].ac, 22.0 * watt);
    EXPECT_EQ(found[2].from, 4.0 * hour);
    EXPECT_EQ(found[2].ac, 12.0 * watt);
    EXPECT_EQ(found[3].from, 26.0 * hour);
}

TEST(demand, changes_at_one_instant_are_one_step) {
    scenario::Load early = load("early", 10);
    early.hours = {{.from = 20.0 * hour, .until = 22.0 * hour}};
    scenario::Load late = load("late", 30);
    late.hours = {{.from = 22.0 * hour, .until = 23.0 * hour}};
    const std::vector<DemandStep> found = steps(with({early, late}));
    ASSERT_GE(found.size(), 4U);
    EXPECT_EQ(found[2].from, 4.0 * hour);
    EXPECT_EQ(found[2].ac, 30.0 * watt);
    EXPECT_EQ(found[3].from, 5.0 * hour);
    EXPECT_EQ(found[3].ac, 0.0 * watt);
}

TEST(demand, a_load_that_takes_over_from_an_equal_one_changes_nothing) {
    scenario::Load early = load("early", 10);
    early.hours = {{.from = 18.0 * hour, .until = 22.0 * hour}};
    scenario::Load late = load("late", 10);
    late.hours = {{.from = 22.0 * hour, .until = 18.0 * hour}};
    EXPECT_EQ(steps(with({early, late})).size(), 1U);
}

TEST(demand, the_three_cases_share_their_times) {
    const scenario::Scenario scenario = with({load("router", 12)});
    EXPECT_EQ(steps(scenario, Case::low).front().ac, 6.0 * watt);
    EXPECT_EQ(steps(scenario, Case::high).front().ac, 18.0 * watt);
}

TEST(demand, direct_loads_bypass_the_inverter_and_pay_their_adaptor) {
    scenario::Scenario scenario = with({load("phone", 9, Outlet::usb)});
    scenario.inverter.reset();
    const std::vector<DemandStep> found = steps(scenario);
    ASSERT_EQ(found.size(), 1U);
    EXPECT_EQ(found[0].ac, 0.0 * watt);
    EXPECT_NEAR(found[0].direct / watt, 10.0, 1e-12);
    EXPECT_EQ(found[0].direct_useful, 9.0 * watt);
    EXPECT_FALSE(found[0].inverter_on);
}

TEST(demand, reactive_power_follows_from_the_power_factor) {
    scenario::Load pump = load("pump", 600);
    pump.power_factor = units::PowerFactor(0.6);
    EXPECT_NEAR(steps(with({pump})).front().ac_reactive.amount() / watt, 800.0, 1e-9);
}

TEST(demand, hours_with_the_inverter_off_feed_no_alternating_current) {
    scenario::Scenario scenario = with({load("router", 12), load("lamp", 5, Outlet::twelve_volt)});
    scenario.inverter->off = {{.from = 23.0 * hour, .until = 6.0 * hour}};
    const std::vector<DemandStep> found = steps(scenario);
    ASSERT_EQ(found.size(), 5U);
    EXPECT_EQ(found[1].from, 5.0 * hour);
    EXPECT_FALSE(found[1].inverter_on);
    EXPECT_EQ(found[1].ac, 0.0 * watt);
    EXPECT_EQ(found[1].direct, 5.0 * watt);
    EXPECT_EQ(found[2].from, 12.0 * hour);
    EXPECT_TRUE(found[2].inverter_on);
}

TEST(demand, items_of_a_cycling_load_follow_one_another) {
    scenario::Load fridge = load("fridge", 100);
    fridge.count = 3;
    fridge.runs = scenario::DutyCycle{15.0 * minute, 45.0 * minute, 0.0 * minute};
    EXPECT_EQ(steps(with({fridge})).size(), 1U);  // always just one of the three
    EXPECT_EQ(steps(with({fridge})).front().ac, 100.0 * watt);
}

TEST(demand, items_of_a_steady_load_add_up) {
    scenario::Load lamp = load("lamp", 8);
    lamp.count = 4;
    EXPECT_EQ(steps(with({lamp})).front().ac, 32.0 * watt);
}

TEST(demand, a_use_tells_energy_time_and_evidence) {
    scenario::Load lamp = load("lamp", 8);
    lamp.count = 2;
    lamp.hours = {{.from = 20.0 * hour, .until = 23.0 * hour}};
    const auto uses = outage::load_uses(demand::plan_demand(with({lamp})).value());
    ASSERT_EQ(uses.size(), 1U);
    EXPECT_EQ(uses[0].name, "lamp");
    EXPECT_EQ(uses[0].running, 16.0 * watt);
    EXPECT_EQ(uses[0].on_time, 6.0 * hour);
    EXPECT_NEAR(uses[0].wanted / units::watt_hour, 96.0, 1e-9);
    EXPECT_NEAR(uses[0].per_day / units::watt_hour, 48.0, 1e-9);
    EXPECT_EQ(uses[0].from_what, "stated 8 W");
}

TEST(demand, a_cycle_without_a_phase_says_which_it_took) {
    scenario::Load fridge = load("fridge", 100);
    fridge.runs = scenario::DutyCycle{15.0 * minute, 45.0 * minute, {}};
    const auto demand = demand::plan_demand(with({fridge}));
    ASSERT_TRUE(demand);
    EXPECT_TRUE(std::ranges::any_of(demand->assumptions, [](const scenario::Assumption& each) {
        return each.where == "load[0].runs.starts_at";
    }));
}

TEST(demand, alternating_current_without_an_inverter_is_refused) {
    scenario::Scenario scenario = with({load("router", 12)});
    scenario.inverter.reset();
    const auto demand = demand::plan_demand(scenario);
    ASSERT_FALSE(demand);
    EXPECT_EQ(demand.error().front().where, "inverter");
}

TEST(demand, every_unusable_load_is_named_at_once) {
    scenario::Load none = load("none", 1);
    none.draw.reset();
    scenario::Load odd = load("odd", 1);
    odd.count = 0;
    odd.days = {0};
    const auto demand = demand::plan_demand(with({none, load("good", 1), odd}));
    ASSERT_FALSE(demand);
    ASSERT_EQ(demand.error().size(), 3U);
    EXPECT_EQ(demand.error()[0].where, "load[0]");
    EXPECT_EQ(demand.error()[1].where, "load[2].count");
    EXPECT_EQ(demand.error()[2].where, "load[2].days");
}

TEST(demand, an_outage_of_no_time_is_refused) {
    scenario::Scenario scenario = with({});
    scenario.outage.lasts = {};
    EXPECT_FALSE(demand::plan_demand(scenario));
}

scenario::Scenario with_a_freezer(double room) {
    scenario::Load freezer;
    freezer.name = "box";
    freezer.keeps_cold = scenario::KeepsCold::freezer;
    freezer.draw = scenario::MeteredUse{1000.0 * units::watt_hour, 24.0 * units::hour, {}};
    freezer.runs = scenario::DutyCycle{15.0 * units::minute, 60.0 * units::minute, {}};
    freezer.room = units::celsius(room);
    scenario::Scenario scenario;
    scenario.outage.starts = units::LocalTime(20'000.0 * units::day);
    scenario.outage.lasts = 10.0 * units::day;
    scenario.inverter.emplace().continuous = 2400.0 * units::watt;
    scenario.loads = {freezer};
    return scenario;
}

// 1.4417 at 35 degC over 22 degC (kept_cold.cpp): on for longer, at the same power.
TEST(demand, a_warm_room_raises_the_hours_of_a_compressor_not_its_power) {
    const auto cool = demand::plan_demand(with_a_freezer(22.0)).value();
    const auto warm = demand::plan_demand(with_a_freezer(35.0)).value();
    const auto use = [](const demand::Demand& demand) { return outage::load_uses(demand)[0]; };
    EXPECT_NEAR(use(warm).wanted / use(cool).wanted, 1.4417, 1e-4);
    EXPECT_EQ(use(warm).running, use(cool).running);
    EXPECT_NEAR(use(warm).on_time / use(cool).on_time, 1.4417, 1e-4);
    EXPECT_FALSE(warm.loads[0].strands_high.empty());
}

TEST(demand, what_no_cycle_is_told_of_draws_more_in_a_warm_room) {
    scenario::Scenario scenario = with_a_freezer(35.0);
    scenario.loads[0].runs.reset();
    const auto use = outage::load_uses(demand::plan_demand(scenario).value())[0];
    EXPECT_NEAR(use.per_day / units::watt_hour, 1441.7, 0.1);
}

TEST(demand, an_appliance_of_the_list_has_usual_hours_and_they_are_told) {
    scenario::Scenario scenario = with_a_freezer(22.0);
    scenario.loads[0] = scenario::Load{.name = "oven"};
    scenario.loads[0].like = "microwave oven";
    const auto demand = demand::plan_demand(scenario).value();
    EXPECT_NEAR(outage::load_uses(demand)[0].on_time / units::minute, 200.0, 1e-6);
    EXPECT_TRUE(std::ranges::any_of(demand.assumptions, [](const auto& assumed) {
        return assumed.where == "load[0].hours" &&
               in_english(assumed.text).find("20 min a day") != std::string::npos;
    }));
    scenario.loads[0].hours = {{.from = 0.0 * units::hour, .until = 1.0 * units::hour}};
    EXPECT_NEAR(outage::load_uses(demand::plan_demand(scenario).value())[0].on_time / units::hour,
                10.0, 1e-9);
}

}  // namespace
