// Which entries of a log hold, and in what order.
#include <gmock/gmock.h>

#include <gtest/gtest.h>

#include "engine/scenario/log_sample.hpp"
#include "units/text.hpp"

namespace {

using log_sample::every_kind;
using log_sample::read_log;

TEST(standing, what_stands_is_in_order_of_time_without_what_was_struck) {
    const auto log = read_log(every_kind);
    const auto places = scenario::standing(log);
    EXPECT_EQ(places.size(), 9U);
    EXPECT_EQ(places.front(), 1U);
    EXPECT_EQ(places.back(), 9U);
    EXPECT_EQ(std::ranges::count(places, 2U), 0);   // struck
    EXPECT_EQ(std::ranges::count(places, 10U), 0);  // strikes
    for (std::size_t i = 1; i < places.size(); ++i)
        EXPECT_LE(log[places[i - 1]].at, log[places[i]].at);
}

TEST(standing, the_order_in_the_file_changes_nothing) {
    auto log = read_log(every_kind);
    std::vector<std::string> before;
    for (const auto i : scenario::standing(log))
        before.push_back(scenario::print(log[i]));
    std::ranges::reverse(log);
    std::vector<std::string> after;
    for (const auto i : scenario::standing(log))
        after.push_back(scenario::print(log[i]));
    EXPECT_EQ(before, after);
}

TEST(standing, the_same_entry_twice_counts_once) {
    const std::string entry = "[[log]]\nat = 2026-01-15T06:00:00\nreads = \"13.2 V\"\n";
    const auto log = read_log(entry + entry);
    EXPECT_EQ(log.size(), 2U);
    EXPECT_EQ(scenario::standing(log).size(), 1U);
}

TEST(standing, a_strike_without_a_name_strikes_all_of_its_instant) {
    const auto log = read_log(R"([[log]]
at = 2026-01-15T06:00:00
reads = "13.2 V"
[[log]]
at = 2026-01-15T06:00:00
happened = "switched off"
load = "refrigerator"
[[log]]
at = 2026-01-15T07:00:00
strikes = 2026-01-15T06:00:00
)");
    EXPECT_TRUE(scenario::standing(log).empty());
}

}  // namespace
