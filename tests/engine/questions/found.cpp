#include "questions/found.hpp"

#include <gtest/gtest.h>

#include "scenario/file/read.hpp"

namespace {

using questions::Asked;

scenario::ReadScenario with_a_generator() {
    return scenario::read_scenario(R"(format = 1
title = "Two supplies"
[outage]
starts = 2026-01-14T18:00:00
lasts = "10 h"
battery_temperature = "25 degC"
[[pack]]
name = "main"
chemistry = "lifepo4"
capacity = "100 Ah"
[[load]]
name = "lamp"
from = "12V"
power = "20 W"
[[load]]
name = "heater"
from = "generator"
power = "1500 W"
)",
                                   "two.toml")
        .value();
}

// What a generator feeds is of no concern to the packs, whatever is asked; the question of reading
// shows the whole file.
TEST(found, loads_that_something_else_feeds_are_set_aside_for_all_questions_but_reading) {
    const auto read = with_a_generator();
    const auto outage = questions::find(read, Asked{questions::OutageAsked{.members = 0}}, {});
    ASSERT_TRUE(outage);
    EXPECT_EQ(std::get<questions::OutageFound>(*outage).plan.loads.size(), 1U);
    const auto wiring = questions::find(read, Asked{questions::WiringAsked{}}, {});
    ASSERT_TRUE(wiring);
    EXPECT_EQ(std::get<questions::WiringFound>(*wiring).scenario.loads.size(), 1U);
    const auto whole = questions::find(read, Asked{questions::ReadAsked{}}, {});
    ASSERT_TRUE(whole);
    EXPECT_EQ(std::get<questions::ReadFound>(*whole).read.scenario.loads.size(), 2U);
}

}  // namespace
