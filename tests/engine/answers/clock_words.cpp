#include "answers/clock_words.hpp"

#include <chrono>

namespace {

using namespace answers;
using units::hour;
using units::minute;

units::LocalTime january(unsigned day, units::Duration after_midnight) {
    return units::local_time(
        std::chrono::year_month_day(std::chrono::year(2026), std::chrono::January,
                                    std::chrono::day(day)),
        after_midnight);
}

// 14 January 2026 is a Wednesday, by any printed calendar.
const units::LocalTime wednesday_evening = january(14, 18.0 * hour);

TEST(clock_words, weekdays_follow_the_calendar) {
    EXPECT_EQ(weekday(wednesday_evening), "Wednesday");
    EXPECT_EQ(short_weekday(january(18, 0.0 * hour)), "Sun");
    EXPECT_EQ(date_and_time(wednesday_evening), "Wed 14 Jan 18:00");
    EXPECT_EQ(time_in_iso(wednesday_evening), "2026-01-14T18:00:00");
}

TEST(clock_words, a_time_a_hair_before_midnight_is_told_as_midnight_of_the_next_day) {
    EXPECT_EQ(weekday_and_time(january(14, 23.0 * hour + 59.9 * minute)), "Thursday 00:00");
}

TEST(clock_words, short_runs_are_told_to_five_minutes_and_never_longer_than_they_are) {
    EXPECT_EQ(end_in_words(wednesday_evening, 3.0 * hour + 39.0 * minute), "Wednesday 21:35");
}

TEST(clock_words, runs_under_two_days_are_told_to_the_hour_and_never_longer_than_they_are) {
    EXPECT_EQ(end_in_words(wednesday_evening, 9.9 * hour), "Thursday 03:00");
    EXPECT_EQ(end_in_words(wednesday_evening, 9.0 * hour), "Thursday 03:00");
    EXPECT_EQ(end_in_words(wednesday_evening, 26.8 * hour), "Thursday 20:00");
}

TEST(clock_words, an_exact_hour_left_a_hair_short_by_arithmetic_stays_that_hour) {
    EXPECT_EQ(end_in_words(wednesday_evening, 9.0 * hour - 1e-7 * units::second), "Thursday 03:00");
}

TEST(clock_words, longer_runs_are_told_to_the_part_of_the_day) {
    EXPECT_EQ(end_in_words(wednesday_evening, 48.0 * hour), "the evening of Friday");
    EXPECT_EQ(end_in_words(wednesday_evening, 59.0 * hour), "the early hours of Saturday");
    EXPECT_EQ(end_in_words(wednesday_evening, 62.0 * hour), "the morning of Saturday");
    EXPECT_EQ(end_in_words(wednesday_evening, 66.9 * hour), "about noon on Saturday");
    EXPECT_EQ(end_in_words(wednesday_evening, 70.0 * hour), "the afternoon of Saturday");
}

TEST(clock_words, midnight_belongs_to_the_day_it_ends) {
    EXPECT_EQ(end_in_words(wednesday_evening, 77.5 * hour), "about the end of Saturday");
    EXPECT_EQ(end_in_words(wednesday_evening, 78.5 * hour), "about the end of Saturday");
}

// Who compares two ends compares what is said of them.
TEST(clock_words, what_sounds_alike_is_alike) {
    EXPECT_EQ(end_in_words(wednesday_evening, 66.0 * hour),
              end_in_words(wednesday_evening, 66.4 * hour));
    EXPECT_EQ(end_in_words(wednesday_evening, 9.0 * hour),
              end_in_words(wednesday_evening, 9.6 * hour));
    EXPECT_FALSE(end_in_words(wednesday_evening, 66.0 * hour) ==
                 end_in_words(wednesday_evening, 90.0 * hour));
}

TEST(clock_words, the_date_is_added_when_the_weekday_comes_round_again) {
    EXPECT_EQ(end_in_words(wednesday_evening, 6.0 * units::day), "the evening of Tuesday");
    EXPECT_EQ(end_in_words(wednesday_evening, 7.0 * units::day), "the evening of Wednesday 21 Jan");
    EXPECT_EQ(end_in_words(wednesday_evening, 7.0 * units::day - 6.0 * hour),
              "about noon on Wednesday 21 Jan");
}

TEST(clock_words, lengths_have_the_same_sharpness) {
    EXPECT_EQ(length_in_words(35.5 * minute), "35 min");
    EXPECT_EQ(length_in_words(26.8 * hour), "26 h");
    EXPECT_EQ(length_in_words(4.0 * units::day), "4 days");
    EXPECT_EQ(length_in_words(84.0 * hour), "3.5 days");
}

TEST(clock_words, small_numbers_are_words) {
    EXPECT_EQ(number_in_words(2), "two");
    EXPECT_EQ(number_in_words(12), "twelve");
    EXPECT_EQ(number_in_words(13), "13");
}

}  // namespace
