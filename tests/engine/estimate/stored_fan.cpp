#include "estimate/ahead/stored_fan.hpp"

#include <string>

#include "support/three_packs.hpp"

namespace {

using namespace units;
using namespace three_packs;
using estimate::Outlook;

Outlook pictured(const scenario::Scenario& scenario, const char* now, unsigned threads = 0) {
    const auto made = estimate::outlook_of(
        scenario, "", ready_of(scenario),
        {.now = *units::read_local_time(now), .threads = threads, .steps = false, .fan = true});
    EXPECT_TRUE(made.has_value());
    return made ? *made : Outlook{};
}

std::string moved(const char* at, const char* what) {
    return fmt::format("[[log]]\nat = {}\npack = \"expansion\"\nhappened = \"{}\"\n", at, what);
}

double width_at(const estimate::StoredFan& fan, Duration at) {
    for (std::size_t i = 0; i < fan.at.size(); ++i)
        if (fan.at[i] >= at - 1e-6 * second) return (fan.high[i] - fan.low[i]) / watt_hour;
    return -1.0;
}

TEST(stored_fan, goes_from_the_start_to_the_end_and_is_in_order) {
    const auto found = pictured(with(""), next_noon);
    ASSERT_TRUE(found.fan.has_value());
    const auto& fan = *found.fan;
    EXPECT_EQ(fan.at.front(), Duration{});
    EXPECT_NEAR(fan.at.back() / hour, 60.0, 1e-9);
    ASSERT_EQ(fan.low.size(), fan.at.size());
    ASSERT_EQ(fan.high.size(), fan.at.size());
    ASSERT_EQ(fan.likely.intervals.size() + 1, fan.at.size());
    for (std::size_t i = 0; i < fan.at.size(); ++i) {
        EXPECT_GE(fan.low[i], Energy{});
        EXPECT_LE(fan.low[i], fan.high[i]);
        if (i > 0) {
            EXPECT_LT(fan.at[i - 1], fan.at[i]);
        }
    }
}

TEST(stored_fan, a_reading_narrows_it_at_its_hour) {
    const auto none = pictured(with(""), next_noon);
    const auto read = pictured(with(shows("2026-01-15T11:00:00", 55)), next_noon);
    EXPECT_LT(width_at(*read.fan, 17.0 * hour), 0.8 * width_at(*none.fan, 17.0 * hour));
}

TEST(stored_fan, any_number_of_threads_gives_the_same) {
    const auto scenario = with(shows("2026-01-15T11:00:00", 55));
    const auto one = pictured(scenario, next_noon, 1);
    const auto three = pictured(scenario, next_noon, 3);
    EXPECT_EQ(one.fan->low, three.fan->low);
    EXPECT_EQ(one.fan->high, three.fan->high);
}

TEST(stored_fan, falls_by_the_packs_that_leave_and_rises_as_they_come_back) {
    const auto found = pictured(
        with(moved("2026-01-15T00:10:00", "pack left") + moved("2026-01-15T06:10:00", "pack back")),
        next_noon);
    const auto stored = [&](Duration at) {
        for (const auto& interval : found.fan->likely.intervals)
            if (interval.to >= at) return double(interval.flows.stored_at_end / watt_hour);
        return 0.0;
    };
    EXPECT_LT(stored(7.0 * hour), 0.5 * stored(6.0 * hour));
    EXPECT_GT(stored(13.0 * hour), 1.5 * stored(12.0 * hour));
    EXPECT_EQ(found.fan->low.size(), found.fan->at.size());
}

TEST(stored_fan, is_not_made_unasked) {
    EXPECT_FALSE(outlook("", next_noon).fan.has_value());
}

}  // namespace
