// Times of day and dates in a person's line.
#include "notes/moments.hpp"

#include "units/clock.hpp"

namespace {

using notes::Day;
using notes::Words;

// A Thursday.
const units::LocalTime now = *units::read_local_time("2026-01-15T22:00:00");

std::string at(std::string_view line, Day day = Day::latest) {
    Words words(line);
    const auto found = notes::take_moment(words, day, now);
    if (!found) return "none";
    std::string text = units::print(*found);
    for (const std::string& word : words.left())
        text += " " + word;
    return text;
}

TEST(moments, a_time_is_the_latest_such_time_before_now) {
    EXPECT_EQ(at("21:30"), "2026-01-15T21:30:00");
    EXPECT_EQ(at("22:30"), "2026-01-14T22:30:00");
    EXPECT_EQ(at("22:10"), "2026-01-15T22:10:00");  // the clocks may differ
    EXPECT_EQ(at("now"), "2026-01-15T22:00:00");
    EXPECT_EQ(at("yesterday 23:50"), "2026-01-14T23:50:00");
    EXPECT_EQ(at("today 7:05"), "2026-01-15T07:05:00");
    EXPECT_EQ(at("Wed 21:30"), "2026-01-14T21:30:00");
    EXPECT_EQ(at("thursday 21:30"), "2026-01-15T21:30:00");
    EXPECT_EQ(at("Friday 21:30"), "2026-01-09T21:30:00");
}

TEST(moments, half_days_and_dates_are_read) {
    EXPECT_EQ(at("9:30 pm"), "2026-01-15T21:30:00");
    EXPECT_EQ(at("12:30am"), "2026-01-15T00:30:00");
    EXPECT_EQ(at("12:30 pm"), "2026-01-15T12:30:00");
    EXPECT_EQ(at("2026-01-15 06:00"), "2026-01-15T06:00:00");
    EXPECT_EQ(at("2026-01-15T06:00"), "2026-01-15T06:00:00");
}

TEST(moments, the_next_such_time_lies_ahead) {
    EXPECT_EQ(at("12:00", Day::next), "2026-01-16T12:00:00");
    EXPECT_EQ(at("23:00", Day::next), "2026-01-15T23:00:00");
    EXPECT_EQ(at("Thursday 12:00", Day::next), "2026-01-22T12:00:00");
    EXPECT_EQ(at("tomorrow 12:00", Day::next), "2026-01-16T12:00:00");
}

TEST(moments, other_words_stay) {
    EXPECT_EQ(at("main at 21:30 reads"), "2026-01-15T21:30:00 main at reads");
    EXPECT_EQ(at("main 12.9 V"), "none");
    EXPECT_EQ(at("25:00"), "none");
}

}  // namespace
