#include "questions/outage.hpp"

#include <gtest/gtest.h>

#include "scenario/file/read.hpp"

namespace {

using questions::OutageAsked;

scenario::ReadScenario lamp(const std::string& more = {}) {
    return scenario::read_scenario(R"(format = 1
title = "A lamp"
[outage]
starts = 2026-01-14T18:00:00
lasts = "1 d"
battery_temperature = "25 degC"
[[pack]]
name = "main"
chemistry = "lifepo4"
capacity = "100 Ah"
)" + more + R"([[load]]
name = "lamp"
from = "12V"
power = "20 W"
evidence = "metered"
)",
                                   "lamp.toml")
        .value();
}

// 100 Ah at some 13 V carry 20 W for some 60 h, with any draw of what is not known.
TEST(outage_question, finds_the_plan_and_its_chance) {
    const auto found = questions::find(lamp(), OutageAsked{.members = 64}, {});
    ASSERT_TRUE(found);
    EXPECT_TRUE(found->plan.likely.survives);
    ASSERT_TRUE(found->chance);
    EXPECT_EQ(found->chance->figures.members, 64);
    EXPECT_DOUBLE_EQ(found->chance->figures.of.value(), 1.0);
    EXPECT_FALSE(found->chance->more);
}

TEST(outage_question, tells_no_chance_where_no_member_is_asked_for) {
    const auto found = questions::find(lamp(), OutageAsked{.members = 0}, {});
    ASSERT_TRUE(found);
    EXPECT_FALSE(found->chance);
}

TEST(outage_question, begins_with_what_storage_leaves) {
    const auto stored = lamp("[storage]\nsince = 2025-07-14\n");
    const auto full = questions::find(stored, OutageAsked{.members = 0}, {});
    const auto after =
        questions::find(stored, OutageAsked{.members = 0, .after_storage = true}, {});
    ASSERT_TRUE(full && after);
    EXPECT_LT(after->plan.usable_at_start, full->plan.usable_at_start);
    EXPECT_FALSE(after->assumed.empty());
}

}  // namespace
