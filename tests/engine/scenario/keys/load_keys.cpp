// Keys of [[load]]: what people write, taken or refused with what to write.
#include <gmock/gmock.h>

#include <gtest/gtest.h>

#include "engine/scenario/sample.hpp"
#include "engine/scenario/told.hpp"

namespace {

using testing::HasSubstr;
using testing::IsEmpty;
using testing::SizeIs;
using told::hint;
using told::read;
using told::with;

TEST(load_keys, a_part_of_the_time_is_said_by_a_cycle) {
    for (const char* const duty : {"duty_cycle = \"30 %\"", "runs = {duty = \"30 %\"}"})
        EXPECT_THAT(hint(with(std::string("power = \"60 W\"\n") + duty)),
                    HasSubstr("runs = {on = \"15 min\", every = \"45 min\"}"))
            << duty;
    EXPECT_EQ(hint(with("power = \"60 W\"\nduty = \"30 %\"")), "it was taken");
    EXPECT_THAT(hint(with("power = \"60 W\"\nduty = \"30 %\"\nruns = {on = \"15 min\", "
                          "every = \"45 min\"}")),
                HasSubstr("keep runs"));
}

TEST(load_keys, a_time_of_day_is_no_cycle) {
    const auto errors =
        told::errors_of(with("power = \"60 W\"\nruns = {from = \"06:00\", to = \"07:00\"}"));
    ASSERT_THAT(errors, SizeIs(2));  // nothing besides is demanded
    for (const units::Error& error : errors)
        EXPECT_THAT(std::string(error.remedy), HasSubstr("write hours = [\"06:00-07:00\"]"));
    EXPECT_EQ(hint(with("power = \"60 W\"\nhours = [\"06:00-07:00\"]")), "it was taken");
}

// 37 kWh a month is 12 x 37 = 444 kWh a year.
TEST(load_keys, a_label_without_its_year_is_shown_with_it) {
    EXPECT_THAT(hint(with("label = \"450 kWh\"")), HasSubstr("write \"450 kWh/yr\""));
    for (const char* const label : {"37 kWh/month", "37 kWh a month", "444 kWh/yr"}) {
        const auto read =
            scenario::read_scenario(with("label = \"" + std::string(label) + "\""), "plan.toml");
        ASSERT_TRUE(read.has_value()) << label;
        const auto average = std::get<scenario::YearlyLabel>(*read->scenario.loads[0].draw).average;
        EXPECT_NEAR(average / units::watt, 444'000.0 / 8760.0, 0.04) << label;
    }
    EXPECT_EQ(hint(with("label = \"444 kWh/yr\"")), "it was taken");
    EXPECT_THAT(hint(with("label = \"60 V\"")), HasSubstr("give power"));
}

TEST(load_keys, the_first_priority_asks_whether_it_is_medical) {
    const auto warnings = [](const char* more) {
        return scenario::read_scenario(with(std::string("power = \"60 W\"\npriority = 1\n") + more),
                                       "plan.toml")
            .value()
            .warnings.size();
    };
    EXPECT_EQ(warnings(""), 1U);
    EXPECT_EQ(warnings("medical = true"), 0U);
    EXPECT_EQ(warnings("medical = false"), 0U);
}

TEST(load_keys, a_short_metering_of_a_load_that_cycles_is_warned_of) {
    const auto plan = read(sample::smallest(
        "[[load]]\nname = \"fridge\"\nmetered = {energy = \"400 Wh\", over = \"6 h\"}\n"
        "runs = {on = \"15 min\", every = \"45 min\"}\n"));
    ASSERT_THAT(plan.warnings, SizeIs(1));
    EXPECT_EQ(plan.warnings[0].where, "load[0].metered");
    const auto steady = read(sample::smallest(
        "[[load]]\nname = \"lamp\"\nmetered = {energy = \"400 Wh\", over = \"6 h\"}\n"));
    EXPECT_THAT(steady.warnings, IsEmpty());
}

}  // namespace
