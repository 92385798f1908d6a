#include "questions/now.hpp"

#include "file_of.hpp"

namespace {

using questions::NowAsked;
using testing::HasSubstr;
using units::hour;

const std::string lamp =
    file_of::outage("2 d", file_of::warm) + file_of::a_pack + file_of::load("lamp", "20 W");

// 48 h of 20 W are 960 Wh of 1280 Wh; after twelve hours 36 h are left of the outage, and 240 Wh
// less in the pack: four fifths of it.
TEST(now_question, what_is_left_counts_from_the_moment_that_is_asked_about) {
    const auto read = file_of::text(lamp);
    const auto starts = read.scenario.outage.starts;
    const auto found = questions::find(read, NowAsked{.at = starts + 12.0 * hour}, {});
    ASSERT_TRUE(found);
    EXPECT_EQ(found->at, starts + 12.0 * hour);
    EXPECT_NEAR(found->outlook.left / hour, 36.0, 1e-9);
    EXPECT_EQ(found->outlook.readings, 0);
    EXPECT_NEAR(found->outlook.charge_likely.value(), 1.0 - 240.0 / 1280.0, 0.04);
    EXPECT_LE(found->outlook.charge_low, found->outlook.charge_likely);
    EXPECT_LE(found->outlook.charge_likely, found->outlook.charge_high);
}

TEST(now_question, entries_after_the_moment_do_not_count_yet) {
    const auto read = file_of::text(lamp + "[[log]]\nat = 2026-01-14T18:00:00\nshows = \"50 %\"\n");
    const auto starts = read.scenario.outage.starts;
    EXPECT_EQ(questions::find(read, NowAsked{.at = starts + 12.0 * hour}, {})->outlook.readings, 0);
    EXPECT_EQ(questions::find(read, NowAsked{.at = starts + 20.0 * hour}, {})->outlook.readings, 1);
}

TEST(now_question, a_unit_that_cannot_be_planned_is_refused) {
    const auto read = file_of::text(file_of::outage("1 d") + file_of::a_pack + file_of::a_kettle);
    const auto refused = questions::find(read, NowAsked{.at = read.scenario.outage.starts}, {});
    ASSERT_FALSE(refused);
    EXPECT_THAT(refused.error().front().found, HasSubstr("kettle needs one"));
}

}  // namespace
