#include "outage/clock/motor_starts.hpp"

#include "outage/plan.hpp"
#include "outage/ready.hpp"
#include "scenario/file/read.hpp"

namespace {

using namespace outage;
using units::hour;
using units::minute;
using units::watt;

constexpr std::string_view fridge_and_pump = R"(
format = 1
title = "Fridge and pump"
[outage]
starts = 2026-06-01T06:00:00
lasts = "6 h"
[[pack]]
name = "main"
count = 4
chemistry = "lifepo4"
capacity = "100 Ah"
[inverter]
continuous = "3000 W"
surge = "6000 W"
[[load]]
name = "fridge"
power = "120 W"
runs = {on = "15 min", every = "1 h", starts_at = "10 min"}
motor = {kind = "compressor_rsir"}
[[load]]
name = "pump"
power = "600 W"
runs = {on = "5 min", every = "2 h", starts_at = "15 min"}
motor = {kind = "split_phase", horsepower = "1/3 hp"}
[[load]]
name = "lamp"
power = "20 W"
[[load]]
name = "radio"
from = "12V"
power = "10 W"
)";

Plan planned(std::string_view text) {
    const auto read = scenario::read_scenario(text, "test", {});
    EXPECT_TRUE(read);
    const auto plan = plan_outage(read->scenario);
    EXPECT_TRUE(plan);
    return *plan;
}

TEST(motor_starts, each_on_time_of_a_motor_is_a_start) {
    const auto plan = planned(fridge_and_pump);
    ASSERT_EQ(plan.starts.size(), 6U + 3U);
    EXPECT_EQ(plan.starts[0].load, 0U);
    EXPECT_NEAR(plan.starts[0].at / minute, 10.0, 1e-9);
    EXPECT_EQ(plan.starts[1].load, 1U);
    EXPECT_NEAR(plan.starts[1].at / minute, 15.0, 1e-9);
    for (std::size_t i = 1; i < plan.starts.size(); ++i)
        EXPECT_GE(plan.starts[i].at, plan.starts[i - 1].at);
}

TEST(motor_starts, what_runs_besides_is_told_without_the_motor_itself) {
    const auto plan = planned(fridge_and_pump);
    EXPECT_NEAR(plan.starts[0].ac.likely / watt, 20.0, 1e-6);
    EXPECT_NEAR(plan.starts[1].ac.likely / watt, 140.0, 1e-6);  // the fridge runs
    EXPECT_NEAR(plan.starts[1].direct.likely / watt, 10.0, 1e-6);
    EXPECT_GT(plan.starts[1].ac.high, plan.starts[1].ac.likely);
    EXPECT_LT(plan.starts[1].ac.low, plan.starts[1].ac.likely);
}

TEST(motor_starts, the_rested_voltage_falls_with_the_charge) {
    const auto plan = planned(fridge_and_pump);
    EXPECT_GT(plan.starts.front().rested, plan.starts.back().rested);
    EXPECT_GT(plan.starts.front().charge, plan.starts.back().charge);
    EXPECT_NEAR(plan.starts.front().rested / units::volt, 13.4, 0.9);
}

TEST(motor_starts, nothing_starts_once_the_supply_is_gone) {
    auto text = std::string(fridge_and_pump);
    text.replace(text.find("count = 4"), 9, "count = 1");
    text.replace(text.find("\"600 W\""), 7, "\"300 W\"");
    text.replace(text.find("\"6 h\""), 5, "\"60 h\"");
    const auto plan = planned(text);
    ASSERT_EQ(plan.likely.limited_by, LimitedBy::usable);
    ASSERT_FALSE(plan.likely.out.empty());  // and nothing charges it again
    for (const auto& start : plan.starts)
        for (const auto& out : plan.likely.out)
            EXPECT_FALSE(start.at > out.from && start.at < out.to);
}

TEST(motor_starts, a_load_like_one_of_the_list_is_planned_with_its_range) {
    auto text = std::string(fridge_and_pump);
    const auto from = text.find("power = \"120 W\"");
    text.replace(from, text.find("[[load]]", from) - from, "like = \"refrigerator\"\n");
    const auto plan = planned(text);
    EXPECT_NEAR(plan.loads[0].running_low / watt, 80.0, 1e-9);
    EXPECT_NEAR(plan.loads[0].running / watt, 130.0, 1e-9);
    EXPECT_NEAR(plan.loads[0].running_high / watt, 200.0, 1e-9);
    const auto told = std::ranges::count_if(plan.assumptions, [](const auto& assumption) {
        return in_english(assumption.text).find("as a refrigerator") != std::string::npos;
    });
    EXPECT_GE(told, 3);  // power, cycle, motor
}

}  // namespace
