#include "estimate/outlook.hpp"

#include <algorithm>
#include <cmath>
#include <gmock/gmock.h>
#include <limits>

#include <gtest/gtest.h>

#include "outage/clock/clock.hpp"
#include "sizing/builds/builds.hpp"
#include "sizing/member_runs.hpp"
#include "sizing/members_of.hpp"
#include "support/three_packs.hpp"

namespace {

using namespace units;
using estimate::Outlook;
using namespace three_packs;

void expect_same(const chance::Figures& one, const chance::Figures& other) {
    EXPECT_EQ(one.of, other.of);
    EXPECT_EQ(one.low, other.low);
    EXPECT_EQ(one.high, other.high);
    EXPECT_EQ(one.members, other.members);
    EXPECT_EQ(one.nine_in_ten, other.nine_in_ten);
    EXPECT_EQ(one.half, other.half);
    EXPECT_EQ(one.one_in_ten, other.one_in_ten);
    EXPECT_EQ(one.count_on, other.count_on);
}

void expect_in_order(const Outlook& found) {
    EXPECT_LE(found.figures.nine_in_ten, found.figures.half);
    EXPECT_LE(found.figures.half, found.figures.one_in_ten);
    EXPECT_LE(found.charge_low, found.charge_likely);
    EXPECT_LE(found.charge_likely, found.charge_high);
    EXPECT_LE(found.figures.effective, double(found.figures.members) * (1.0 + 1e-9));
}

TEST(outlook, an_empty_log_gives_the_outage_to_the_last_bit) {
    const auto scenario = with("");
    const auto ready = ready_of(scenario);
    const auto members = sizing::members_of(scenario, "", ready, 1);
    const auto figures =
        members.figures(sizing::MemberRuns(members).ends(), sizing::goal_of(scenario));
    const auto found = outlook("", start);
    expect_same(found.figures, figures);
    EXPECT_TRUE(found.fits);
    EXPECT_TRUE(found.departures.empty());
    EXPECT_EQ(found.readings, 0);
}

TEST(outlook, any_number_of_threads_gives_the_same_bits) {
    const auto log = shows("2026-01-15T06:00:00", 70) + shows("2026-01-15T11:00:00", 55);
    expect_same(outlook(log, next_noon, false, 1).figures,
                outlook(log, next_noon, false, 3).figures);
}

TEST(outlook, the_order_of_entries_and_an_entry_written_twice_change_nothing) {
    const auto a = shows("2026-01-15T06:00:00", 72);
    const auto b = shows("2026-01-15T11:00:00", 60);
    const auto one = outlook(a + b, next_noon);
    expect_same(one.figures, outlook(b + a, next_noon).figures);
    expect_same(one.figures, outlook(a + b + a, next_noon).figures);
    expect_in_order(one);
}

TEST(outlook, what_is_written_after_now_is_not_known_yet) {
    const auto early = shows("2026-01-15T06:00:00", 72);
    expect_same(outlook(early, next_noon).figures,
                outlook(early + shows("2026-01-15T18:00:00", 10), next_noon).figures);
}

TEST(outlook, a_reading_moves_the_end_towards_it_and_narrows) {
    const auto none = outlook("", next_noon);
    const auto low = outlook(shows("2026-01-15T11:00:00", 45), next_noon);
    const auto high = outlook(shows("2026-01-15T11:00:00", 68), next_noon);
    EXPECT_LT(low.figures.half, none.figures.half);
    EXPECT_GT(high.figures.half, low.figures.half);
    EXPECT_LT(low.width, none.width);
    for (const auto* found : {&none, &low, &high})
        expect_in_order(*found);
}

TEST(outlook, a_voltage_under_a_load_says_something_and_on_the_plateau_little) {
    const auto none = outlook("", next_noon);
    const auto plateau = outlook(
        "[[log]]\nat = 2026-01-15T11:00:00\nreads = \"13.1 V\"\nunder = \"150 W\"\n", next_noon);
    EXPECT_FALSE(plateau.contradiction.has_value());
    EXPECT_GT(plateau.width, 0.5 * none.width);
    expect_in_order(plateau);
}

TEST(outlook, a_reading_that_cannot_be_is_said_and_not_averaged) {
    const auto none = outlook("", next_noon);
    const auto odd = outlook(shows("2026-01-14T19:00:00", 5), next_noon);
    ASSERT_TRUE(odd.contradiction.has_value());
    EXPECT_EQ(odd.contradiction->odd, std::vector<std::size_t>{0});
    EXPECT_NEAR(odd.width / none.width, 1.0, 0.25);
    // Beside two that agree the odd one is named.
    const auto one_of = outlook(shows("2026-01-15T06:00:00", 72) + shows("2026-01-15T08:00:00", 5) +
                                    shows("2026-01-15T11:00:00", 60),
                                next_noon);
    ASSERT_TRUE(one_of.contradiction.has_value());
    EXPECT_TRUE(one_of.contradiction->one_of_them);
    EXPECT_EQ(one_of.contradiction->odd, std::vector<std::size_t>{1});
}

TEST(outlook, switched_off_lasts_longer_and_on_again_less_so) {
    const auto none = outlook("", next_noon);
    const auto off = outlook(
        "[[log]]\nat = 2026-01-14T20:00:00\nload = \"blower\"\nhappened = \"switched off\"\n",
        next_noon);
    const auto again = outlook(
        "[[log]]\nat = 2026-01-14T20:00:00\nload = \"blower\"\nhappened = \"switched off\"\n"
        "[[log]]\nat = 2026-01-15T08:00:00\nload = \"blower\"\nhappened = \"switched on\"\n",
        next_noon);
    EXPECT_GT(off.figures.half, again.figures.half);
    EXPECT_GT(again.figures.half, none.figures.half);
}

TEST(outlook, packs_that_leave_shorten_and_come_back_with_what_they_had) {
    const auto none = outlook("", next_noon);
    const std::string left =
        "[[log]]\nat = 2026-01-14T20:00:00\npack = \"expansion\"\ncount = 1\nhappened = \"pack "
        "left\"\n";
    const auto away = outlook(left, next_noon);
    const auto back = outlook(left +
                                  "[[log]]\nat = 2026-01-14T20:30:00\npack = \"expansion\"\n"
                                  "happened = \"pack back\"\n",
                              next_noon);
    EXPECT_LT(away.figures.half, 0.85 * none.figures.half);
    EXPECT_NEAR(back.figures.half / none.figures.half, 1.0, 0.05);
    EXPECT_GT(away.charge_likely.value(), 0.0);
}

TEST(outlook, what_goes_off_next_is_never_of_somebodys_health) {
    const auto found = outlook(shows("2026-01-15T11:00:00", 45), next_noon, true);
    ASSERT_FALSE(found.next_off.empty());
    for (const auto& step : found.next_off)
        EXPECT_NE(step.load, 2U);
    EXPECT_EQ(found.next_off.front().load, 1U);  // the least needed
    Duration before{};
    for (const auto& step : found.next_off) {
        EXPECT_GE(step.alone, 0.0 * second);
        EXPECT_GE(step.figures.half, before);
        before = step.figures.half;
    }
    ASSERT_TRUE(found.was.has_value());
    EXPECT_GT(found.was->half, found.figures.half);
    for (const auto& next : found.read_next)
        EXPECT_LT(next.width_after, found.width);
    ASSERT_FALSE(found.read_next.empty());
}

TEST(outlook, a_supply_that_is_expected_has_its_own_chance) {
    const auto found = outlook(
        "[[log]]\nat = 2026-01-15T08:00:00\nhappened = \"expected back\"\nby = "
        "2026-01-15T13:00:00\n",
        next_noon);
    ASSERT_TRUE(found.to_expected.has_value());
    EXPECT_GE(*found.to_expected, found.figures.of);
}

}  // namespace
