// Every motor of a scenario: does it start, what binds, and what would help.
#include "engine/starting/made_plan.hpp"

namespace {

using namespace starting;
using made_plan::runs_of;
using made_plan::with_loads;

StartPlan plan_of(const std::string& loads) {
    const auto scenario = with_loads(loads);
    auto plan = plan_starts(scenario, runs_of(scenario));
    EXPECT_TRUE(plan) << (plan ? "" : print(plan.error().front()));
    return plan ? *std::move(plan) : StartPlan{};
}

std::string motor(const std::string& name, const std::string& amperes,
                  const std::string& volts = "120 V") {
    return "[[load]]\nname = \"" + name +
           "\"\npower = \"500 W\"\nmotor = {kind = \"split_phase\", "
           "locked_rotor_current = \"" +
           amperes + "\", voltage = \"" + volts + "\"}\n";
}

// 20 A at 120 V are 2,400 VA of an inverter that gives 6,000 for 5 s; at a power factor of 0.6 to
// 0.85 some 2,000 W from four packs of 13.2 V, 40 A each.
TEST(start_plan, a_small_pump_starts_and_a_large_one_does_not) {
    const auto plan = plan_of(motor("small", "20 A") + motor("large", "80 A"));
    ASSERT_EQ(plan.loads.size(), 2U);
    EXPECT_EQ(plan.loads[0].name, "small");
    EXPECT_EQ(plan.loads[0].judged.verdict, StartVerdict::starts);
    EXPECT_TRUE(plan.loads[0].packs.surely);
    EXPECT_FALSE(plan.loads[0].course.empty());
    // 80 A are 9,600 VA, more than it gives at all.
    EXPECT_EQ(plan.loads[1].judged.verdict, StartVerdict::will_not_start);
    EXPECT_EQ(plan.loads[1].judged.binding, Constraint::surge_power);
    EXPECT_FALSE(plan.loads[1].packs.surely);
    EXPECT_FALSE(plan.loads[1].down_to);
    EXPECT_EQ(plan.packs, 4);
}

TEST(start_plan, another_voltage_never_starts_whatever_else) {
    const auto plan = plan_of(motor("well", "10 A", "230 V"));
    ASSERT_EQ(plan.loads.size(), 1U);
    EXPECT_EQ(plan.loads[0].judged.verdict, StartVerdict::will_not_start);
    EXPECT_EQ(plan.loads[0].judged.binding, Constraint::voltage_class);
    EXPECT_EQ(plan.loads[0].packs.at_best, StartVerdict::will_not_start);
    EXPECT_TRUE(plan.loads[0].what_ifs.empty());
}

// Two of 30 A are 7,200 VA at one instant, beyond 6,000; one after the other they are 3,600 and
// 3,600 beside what the first draws while it runs. The larger goes first.
TEST(start_plan, motors_start_one_after_the_other_the_larger_first) {
    const auto plan = plan_of(motor("first in the file", "28 A") + motor("larger", "32 A"));
    ASSERT_TRUE(plan.together);
    EXPECT_EQ(plan.together->verdict, StartVerdict::will_not_start);
    ASSERT_EQ(plan.staggered.size(), 2U);
    EXPECT_EQ(plan.loads[plan.staggered[0].load].name, "larger");
    EXPECT_NE(plan.staggered[0].judged.verdict, StartVerdict::will_not_start);
    EXPECT_GE(plan.staggered[0].wait, 10.0 * units::second);
}

TEST(start_plan, a_start_says_what_would_change_it) {
    const auto plan =
        plan_of(motor("pump", "20 A") + "[[load]]\nname = \"heater\"\npower = \"700 W\"\n");
    ASSERT_EQ(plan.loads.size(), 1U);
    EXPECT_EQ(plan.loads[0].beside, std::vector<std::string>{"heater"});
    std::vector<std::string> changes;
    for (const WhatIf& what : plan.loads[0].what_ifs)
        changes.push_back(words::in_english(what.change));
    EXPECT_EQ(changes,
              (std::vector<std::string>{"with everything else off", "with a soft-start device",
                                        "with one pack more"}));
}

}  // namespace
