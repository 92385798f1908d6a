// What is found of food that is kept cold, as a plan's findings tell it.
#include "demand/cold_findings.hpp"

#include <gtest/gtest.h>

#include "support/planned_loads.hpp"

namespace {

using planned_loads::finding;
using planned_loads::load;
using planned_loads::with;
using scenario::Finding;
using scenario::Severity;
using units::day;
using units::hour;

scenario::Findings findings(const scenario::Scenario& scenario) {
    scenario::Assumptions assumed;
    const auto model = inverter::model_of(*scenario.inverter, 12.8 * units::volt, assumed).value();
    return demand::cold_findings(scenario, demand::plan_demand(scenario).value(), model);
}

scenario::Load refrigerator() {
    scenario::Load fridge = load("fridge", 1);
    fridge.keeps_cold = scenario::KeepsCold::refrigerator_freezer;
    fridge.draw = scenario::MeteredUse{61.3 * 24.0 * units::watt_hour, 24.0 * hour, {}};
    fridge.runs = scenario::DutyCycle{61.3 / 180.0 * hour, 1.0 * hour, 0.0 * hour};
    fridge.room = units::celsius(22.0);
    return fridge;
}

// 18 W for 8 h a night is 144 Wh; the leak less is 1471.2 - 1373.3 = 98 Wh, both worked by hand in
// kept_cold.cpp; inside 8.2 degC.
TEST(cold_findings, a_night_switch_tells_what_it_saves_and_that_the_food_clock_starts) {
    scenario::Scenario scenario = with({refrigerator()});
    scenario.outage.lasts = 1.0 * day;
    scenario.inverter->off = {{.from = 22.0 * hour, .until = 6.0 * hour}};
    const scenario::Findings all = findings(scenario);
    const Finding* const clock = finding(all, "food clock starts");
    ASSERT_TRUE(clock);
    EXPECT_EQ(clock->severity, Severity::caution);
    EXPECT_NE(in_english(clock->text).find("keeps food for 4 h"), std::string::npos) << clock->text;
    EXPECT_NE(in_english(clock->text).find("8.2"), std::string::npos) << clock->text;
    const Finding* const saved = finding(all, "made up for");
    ASSERT_TRUE(saved);
    EXPECT_NE(in_english(saved->text).find("144 Wh"), std::string::npos) << saved->text;
    EXPECT_NE(in_english(saved->text).find("97.9 Wh of leak"), std::string::npos) << saved->text;
    scenario.inverter->off = {{.from = 2.0 * hour, .until = 4.0 * hour}};
    EXPECT_EQ(finding(findings(scenario), "food clock starts")->severity, Severity::note);
    scenario.inverter->off.clear();
    EXPECT_FALSE(finding(findings(scenario), "food clock starts"));
}

// At 180 W it needs 24/2.936 = 8.17 h a day.
TEST(cold_findings, too_few_hours_to_get_cold_again_are_told) {
    scenario::Load fridge = refrigerator();
    fridge.hours = {{.from = 8.0 * hour, .until = 10.0 * hour},
                    {.from = 16.0 * hour, .until = 18.0 * hour}};
    const Finding* const found = finding(findings(with({fridge})), "does not get cold again");
    EXPECT_TRUE(found);
    fridge.hours = {{.from = 8.0 * hour, .until = 0.0 * hour}};
    EXPECT_FALSE(finding(findings(with({fridge})), "does not get cold again"));
}

// On for 0.8 of the time at 22 degC; at 35 degC 1.44 times that is more than all of it.
TEST(cold_findings, a_room_too_warm_for_its_compressor_is_told) {
    scenario::Load fridge = refrigerator();
    fridge.runs = scenario::DutyCycle{0.8 * hour, 1.0 * hour, 0.0 * hour};
    EXPECT_FALSE(finding(findings(with({fridge})), "run all the time"));
    fridge.room = units::celsius(35.0);
    const scenario::Findings all = findings(with({fridge}));
    const Finding* const found = finding(all, "run all the time");
    ASSERT_TRUE(found);
    EXPECT_EQ(found->severity, Severity::caution);
}

TEST(cold_findings, a_room_that_was_assumed_is_held_against_the_packs) {
    scenario::Load fridge = refrigerator();
    fridge.room.reset();
    scenario::Scenario scenario = with({fridge});
    scenario.outage.battery_temperature = units::celsius(30.0);
    EXPECT_TRUE(finding(findings(scenario), "the packs are at 30"));
    scenario.loads[0].room = units::celsius(24.0);
    EXPECT_FALSE(finding(findings(scenario), "the packs are at"));
}

}  // namespace
