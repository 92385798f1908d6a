#include "estimate/story.hpp"

#include <gmock/gmock.h>

#include "support/three_packs.hpp"

namespace {

using namespace units;
using namespace three_packs;

// Entries of the night of the plan, which begins at 18:00; loads 0 freezer, 1 blower, 2 breathing
// machine; packs 0 main, 1 expansion, two of them.
estimate::Story story(const std::string& log, const char* until = "2026-01-16T18:00:00") {
    return estimate::story_of(with(log), *read_local_time(until));
}

std::string happened(const char* at, const std::string& what) {
    return "[[log]]\nat = 2026-01-14T" + std::string(at) + ":00\n" + what + '\n';
}

constexpr const char* blower_off = "load = \"blower\"\nhappened = \"switched off\"";
constexpr const char* blower_on = "load = \"blower\"\nhappened = \"switched on\"";

// Off at 20:00, 2 h after the start, on again at 21:30; off for good at 23:00.
TEST(story, a_load_is_off_between_its_two_entries) {
    const auto told = story(happened("20:00", blower_off) + happened("21:30", blower_on) +
                            happened("23:00", blower_off));
    EXPECT_THAT(told.off[1], testing::ElementsAre(demand::Span{2.0 * hour, 3.5 * hour},
                                                  demand::Span{5.0 * hour, 60.0 * hour}));
    EXPECT_TRUE(told.is_off(1, 2.0 * hour));
    EXPECT_FALSE(told.is_off(1, 3.5 * hour));
    EXPECT_TRUE(told.off[0].empty());
    EXPECT_FALSE(told.tells_nothing());
    EXPECT_TRUE(story("").tells_nothing());
}

TEST(story, what_is_first_said_to_be_on_was_off_until_then) {
    const auto told = story(happened("19:00", blower_on));
    EXPECT_THAT(told.off[1], testing::ElementsAre(demand::Span{{}, 1.0 * hour}));
    EXPECT_THAT(told.taken_as_off, testing::ElementsAre(1U));
}

// One of two goes, another later; one comes back: 2 - 1 - 1 + 1. What joined later was not there
// before.
TEST(story, packs_are_counted_as_they_come_and_go) {
    const std::string left = "pack = \"expansion\"\ncount = 1\nhappened = \"pack left\"";
    const auto told =
        story(happened("19:00", left) + happened("20:00", left) +
              happened("21:00", "pack = \"expansion\"\ncount = 1\nhappened = \"pack back\""));
    EXPECT_THAT(told.at_start, testing::ElementsAre(1, 2));
    ASSERT_EQ(told.pack_changes.size(), 3U);
    EXPECT_EQ(told.pack_changes[0].joined, -1);
    EXPECT_EQ(told.pack_changes[1].joined, -1);
    EXPECT_EQ(told.pack_changes[2].joined, 1);
    EXPECT_EQ(told.pack_changes[2].at, 3.0 * hour);
    const auto joined =
        story(happened("20:00", "pack = \"expansion\"\ncount = 2\nhappened = \"pack joined\""));
    EXPECT_THAT(joined.at_start, testing::ElementsAre(1, 0));
    EXPECT_EQ(joined.pack_changes.front().joined, 2);
}

TEST(story, what_is_written_later_is_not_known_and_readings_are_apart_from_meters) {
    const std::string log = shows("2026-01-14T22:00:00", 80) + meter("freezer", "0.9 kWh");
    EXPECT_THAT(story(log).readings, testing::ElementsAre(0U));
    EXPECT_THAT(story(log).meters, testing::ElementsAre(1U));
    EXPECT_TRUE(story(log, "2026-01-15T11:00:00").meters.empty());
    const auto back = story(happened("20:00", "happened = \"supply back\"") + log);
    EXPECT_EQ(back.supply_back, read_local_time("2026-01-14T20:00:00").value());
    EXPECT_TRUE(back.readings.empty());
}

}  // namespace
