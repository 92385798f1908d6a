#include "questions/shared/starts.hpp"

#include "motor/kind.hpp"
#include "scenario/file/read.hpp"

namespace {

using testing::HasSubstr;
using units::watt;

scenario::Scenario with_load(const std::string& load) {
    const auto read = scenario::read_scenario(R"(
format = 1
title = "One load"
[outage]
starts = 2026-06-03T06:00:00
lasts = "1 d"
[[pack]]
name = "main"
chemistry = "lifepo4"
capacity = "100 Ah"
[inverter]
continuous = "3000 W"
[[load]]
name = "pump"
)" + load,
                                              "test", {});
    EXPECT_TRUE(read);
    return read->scenario;
}

// 1/2 hp is 373 W at the shaft; a capacitor-start motor of 55 to 76 % draws 491 to 678 W.
TEST(start_runs, a_motor_known_by_its_horsepower_runs_on_output_over_efficiency) {
    const auto found = questions::load_runs(
        with_load("motor = {kind = \"capacitor_start\", horsepower = \"1/2 hp\"}\n"));
    ASSERT_TRUE(found);
    const auto& real = found->runs.front().draw.real;
    EXPECT_NEAR(real.low() / watt, 491.0, 1.0);
    EXPECT_NEAR(real.high() / watt, 678.0, 1.0);
    ASSERT_EQ(found->assumptions.size(), 1U);
    EXPECT_THAT(found->assumptions.front().text, HasSubstr("from its horsepower"));
}

TEST(start_runs, the_power_factor_of_a_running_motor_is_the_same_with_and_without_its_power) {
    const auto stated = questions::load_runs(
        with_load("power = \"500 W\"\nmotor = {kind = \"compressor_csir\", horsepower = "
                  "\"1/2 hp\"}\n"));
    const auto worked_out = questions::load_runs(
        with_load("motor = {kind = \"compressor_csir\", horsepower = \"1/2 hp\"}\n"));
    ASSERT_TRUE(stated && worked_out);
    EXPECT_EQ(stated->runs.front().draw.factor, worked_out->runs.front().draw.factor);
}

}  // namespace
