#include "answers/chance_words.hpp"

#include <gtest/gtest.h>

namespace {

using namespace answers;
using units::hour;
using units::Probability;

// Never rounded up, never zero and never all.
TEST(chance_words, shares_in_words) {
    EXPECT_EQ(times_in_100(Probability(0.899)), "89 times in 100");
    EXPECT_EQ(times_in_100(Probability(0.9)), "90 times in 100");
    EXPECT_EQ(times_in_100(Probability(0.29)), "29 times in 100");
    EXPECT_EQ(times_in_100(Probability(0.0101)), "once in 100");
    EXPECT_EQ(times_in_100(Probability(0.0)), "fewer than once in 100");
    EXPECT_EQ(times_in_100(Probability(1.0)), "more than 99 times in 100");
    EXPECT_EQ(times_in_100(Probability(0.99)), "99 times in 100");
}

TEST(chance_words, what_is_known_badly_is_told_in_tenths) {
    const auto words = [](double of, double half_width) {
        return chance_in_words(
            Probability(of),
            {.low = Probability(of - half_width), .high = Probability(of + half_width)},
            Probability(0.9));
    };
    EXPECT_EQ(words(0.61, 0.03), "61 times in 100");
    EXPECT_EQ(words(0.61, 0.05), "about 6 times in ten");
    EXPECT_EQ(words(0.12, 0.05), "about once in ten");
    EXPECT_EQ(words(0.04, 0.035), "about 4 times in 100");
    EXPECT_EQ(words(0.97, 0.04), "about 97 times in 100");
    EXPECT_EQ(words(0.88, 0.05), "about 8 times in ten");  // 9 would be the goal that it misses
    EXPECT_EQ(words(0.93, 0.05), "about 9 times in ten");
}

// Later than 48 h the part of the day, and never one that has not begun.
TEST(chance_words, what_is_counted_on_is_never_told_later_than_it_is) {
    const auto starts = *units::read_local_time("2026-01-14T18:00");  // a Wednesday
    const auto words = [&](double hours) { return counted_on_in_words(starts, hours * hour); };
    EXPECT_EQ(words(5.99), "Wednesday 23:55");
    EXPECT_EQ(words(30.9), "Friday 00:00");
    EXPECT_EQ(words(65.9), "the morning of Saturday");  // 11:54
    EXPECT_EQ(words(66.5), "about noon on Saturday");
    EXPECT_EQ(words(67.5), "the afternoon of Saturday");
    EXPECT_EQ(words(77.5), "the evening of Saturday");  // 23:30
    EXPECT_EQ(words(78.5), "about the end of Saturday");
    EXPECT_EQ(words(80.0), "the early hours of Sunday");
}

}  // namespace
