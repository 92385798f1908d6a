#include "scenario/file/set_aside.hpp"

#include <gmock/gmock.h>

#include <gtest/gtest.h>

#include "engine/scenario/told.hpp"

namespace {

using told::with;

TEST(set_aside, a_load_that_is_not_there) {
    auto read = scenario::read_scenario(
        with("power = \"60 W\"\ncount = 0\n[[load]]\nname = \"b\"\npower = \"5 W\"\nfrom = "
             "\"generator\"\n[[load]]\nname = \"c\"\npower = \"5 W\"\n"),
        "plan.toml");
    ASSERT_TRUE(read.has_value());
    auto& scenario = read->scenario;
    EXPECT_TRUE(scenario::has_set_aside(scenario));
    for (int time = 0; time < 2; ++time)
        scenario::set_aside(scenario);
    EXPECT_FALSE(scenario::has_set_aside(scenario));
    ASSERT_EQ(scenario.loads.size(), 1U);
    EXPECT_EQ(scenario.loads[0].name, "c");
    EXPECT_EQ(scenario::key_of(scenario.loads[0], 0), "load[2]");
    ASSERT_EQ(scenario.on_generator.size(), 1U);
    EXPECT_EQ(scenario.on_generator[0].name, "b");
}

}  // namespace
