#include "units/clock.hpp"

namespace {

using namespace units;
using namespace std::chrono_literals;

const LocalTime evening = local_time(2026y / std::chrono::January / 14, 18.0 * hour);

TEST(local_time_text, reads_dates_with_and_without_a_time) {
    EXPECT_EQ(*read<LocalTime>("2026-01-14T18:00:00"), evening);
    EXPECT_EQ(*read<LocalTime>("2026-01-14T18:00"), evening);
    EXPECT_EQ(*read<LocalTime>("2026-01-14 18:00"), evening);
    EXPECT_EQ(*read<LocalTime>("2026-01-14"), evening - 18.0 * hour);
    EXPECT_EQ(*read<LocalTime>("2024-02-29T00:00:07.25"),
              local_time(2024y / std::chrono::February / 29, 7.25 * second));
}

// Unix time 1 000 000 000 is 2001-09-09T01:46:40 (POSIX, seconds since the epoch).
TEST(local_time_text, counts_seconds_from_1970) {
    EXPECT_EQ(read<LocalTime>("2001-09-09T01:46:40")->since_1970() / second, 1e9);
}

TEST(local_time_text, prints_what_reads_back) {
    EXPECT_EQ(print(evening), "2026-01-14T18:00:00");
    EXPECT_EQ(print(evening + 0.25 * second), "2026-01-14T18:00:00.25");
    EXPECT_EQ(print(evening + 0.0078125 * second), "2026-01-14T18:00:00.0078125");
    EXPECT_EQ(print(*read<LocalTime>("1969-12-31T23:59:59")), "1969-12-31T23:59:59");
    EXPECT_EQ(print(*read<LocalTime>("0001-01-01")), "0001-01-01T00:00:00");
    EXPECT_EQ(print(*read<LocalTime>("9999-12-31T23:59:59")), "9999-12-31T23:59:59");
}

TEST(local_time_text, refuses_what_is_not_in_the_calendar_or_on_the_clock) {
    for (const char* const text :
         {"", "tomorrow", "2026", "2026-1-14", "2026-13-01", "2026-02-29", "2026-00-10",
          "0000-01-01", "2026-01-14T", "2026-01-14T24:00:00", "2026-01-14T18:60",
          "2026-01-14T18:00:60", "2026-01-14T18", "2026-01-14T18:00:00.", "2026-01-14T18:00:0",
          "2026-01-14x18:00", "2026-01-14T18:00:00junk", "99999-01-01", "-2026-01-14"}) {
        const Result<LocalTime> time = read<LocalTime>(text);
        ASSERT_FALSE(time.has_value()) << text;
        EXPECT_FALSE(time.error().front().remedy.empty());
    }
    EXPECT_FALSE(read<LocalTime>(std::string(10'000, '2')).has_value());
}

TEST(local_time_text, refuses_time_zones_in_words) {
    for (const char* const text :
         {"2026-01-14T18:00:00Z", "2026-01-14T18:00:00-06:00", "2026-01-14T18:00+01:00"}) {
        EXPECT_THAT(read<LocalTime>(text).error().front().found,
                    testing::HasSubstr("names a time zone"));
    }
}

TEST(time_of_day_text, reads_hours_and_minutes) {
    EXPECT_EQ(*read_time_of_day("06:00"), 6.0 * hour);
    EXPECT_EQ(*read_time_of_day("6:05"), 6.0 * hour + 5.0 * minute);
    EXPECT_EQ(*read_time_of_day(" 23:59 "), 24.0 * hour - 1.0 * minute);
}

TEST(time_of_day_text, refuses_more_than_a_day_in_words) {
    EXPECT_EQ(
        print(read_time_of_day("25:00").error().front()),
        "'25:00': a day has 24 hours of 60 minutes, so there is no 25:00; give a time of day from "
        "00:00 to 23:59, such as 06:00");
    EXPECT_EQ(print(read_time_of_day("24:00").error().front()),
              "'24:00': 24:00 can only end a span; write 00:00 for midnight");
    for (const char* const text :
         {"", "6", "06:60", "06:0", "6 am", "24:01", "-1:00", "06:00:00"}) {
        EXPECT_FALSE(read_time_of_day(text).has_value()) << text;
    }
}

TEST(daily_span_text, reads_spans_over_midnight_and_whole_days) {
    EXPECT_EQ(*read<DailySpan>("06:00-07:30"), (DailySpan{6.0 * hour, 7.5 * hour}));
    EXPECT_EQ(*read<DailySpan>("23:00-06:00"), (DailySpan{23.0 * hour, 6.0 * hour}));
    EXPECT_EQ(*read<DailySpan>("23:00 – 06:00"), (DailySpan{23.0 * hour, 6.0 * hour}));
    EXPECT_EQ(*read<DailySpan>("00:00-24:00"), (DailySpan{Duration(), 24.0 * hour}));
}

TEST(daily_span_text, prints_what_reads_back) {
    for (const char* const text :
         {"06:00-07:30", "23:00-06:00", "00:00-24:00", "12:00-24:00", "23:59-00:00"}) {
        EXPECT_EQ(print(*read<DailySpan>(text)), text);
    }
}

TEST(daily_span_text, refuses_a_span_that_may_mean_never_or_all_day) {
    EXPECT_EQ(print(read<DailySpan>("06:00-06:00").error().front()),
              "'06:00-06:00' ends when it begins, which may mean never or all day; leave it out "
              "for never, "
              "write 00:00-24:00 for all day");
    for (const char* const text :
         {"", "06:00", "06:00-", "-06:00", "24:00-06:00", "06:00-25:00", "06:00-07:00-08:00"}) {
        EXPECT_FALSE(read<DailySpan>(text).has_value()) << text;
    }
}

TEST(daily_span, holds_its_beginning_and_not_its_end) {
    const DailySpan night = {.from = 23.0 * hour, .until = 6.0 * hour};
    EXPECT_TRUE(holds(night, 23.0 * hour));
    EXPECT_TRUE(holds(night, Duration()));
    EXPECT_FALSE(holds(night, 6.0 * hour));
    EXPECT_FALSE(holds(night, 12.0 * hour));
    EXPECT_EQ(length_of(night), 7.0 * hour);
    const DailySpan morning = {.from = 6.0 * hour, .until = 7.0 * hour};
    EXPECT_TRUE(holds(morning, 6.0 * hour));
    EXPECT_FALSE(holds(morning, 7.0 * hour));
    EXPECT_EQ(length_of(morning), 1.0 * hour);
    EXPECT_EQ(length_of(DailySpan{Duration(), 24.0 * hour}), 24.0 * hour);
}

// 15 January 2026 is a Thursday, 1 March 2000 was a Wednesday (Gregorian calendar).
TEST(show_clock, names_the_day_and_rounds_to_the_minute) {
    EXPECT_EQ(show_clock(*read<LocalTime>("2026-01-15T03:00:00")), "Thursday 15 Jan 03:00");
    EXPECT_EQ(show_clock(*read<LocalTime>("2000-03-01T12:34:29")), "Wednesday 1 Mar 12:34");
    EXPECT_EQ(show_clock(*read<LocalTime>("2026-01-14T23:59:59.9")), "Thursday 15 Jan 00:00");
}

TEST(show_time, shows_the_clock_of_a_day) {
    EXPECT_EQ(show_time(3.0 * hour), "03:00");
    EXPECT_EQ(show_time(24.0 * hour), "24:00");
    EXPECT_EQ(show_time(3.0 * hour - 1e-6 * second), "03:00");
}

}  // namespace
