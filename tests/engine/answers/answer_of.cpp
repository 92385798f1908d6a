#include "answers/answer_of.hpp"

#include <gtest/gtest.h>

#include "support/made_plan.hpp"

namespace {

using namespace answers;
using namespace questions;

// The command's names; a face tells a question by them.
TEST(answer_of, each_answer_is_of_its_question) {
    OutageFound outage{.scenario = made::scenario(), .plan = made::plan()};
    EXPECT_EQ(answer_of(Found(outage)).question, "outage");
    EXPECT_EQ(answer_of(Found(WiringFound{})).question, "wiring");
    EXPECT_EQ(answer_of(Found(JoinFound{})).question, "join");
}

TEST(answer_of, what_was_taken_for_the_room_stands_among_the_assumptions) {
    JoinFound join;
    join.joining.assumptions = {{.where = "pack[0].resistance", .text = "10 mohm", .source = ""}};
    join.assumed = {{.where = "outage.battery_temperature", .text = "3 degC", .source = ""}};
    const auto assumptions = answer_of(join).assumptions;
    ASSERT_EQ(assumptions.size(), 2U);
    EXPECT_EQ(assumptions[0].where, "pack[0].resistance");
    EXPECT_EQ(assumptions[1].where, "outage.battery_temperature");
}

}  // namespace
