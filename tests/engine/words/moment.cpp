#include "units/clock.hpp"
#include "units/said.hpp"
#include "words/language.hpp"

namespace words {
namespace {

using Form = Moment::Form;

// 15 January 2026 is a Thursday: the calendar of [ISO 8601], week 3, day 4.
std::string shown(Form form, const Language& language = english(),
                  std::string_view time = "2026-01-15T15:04:40") {
    return in(language, units::moment(units::read_local_time(time).value(), form));
}

TEST(moment, is_shown_to_the_minute) {
    EXPECT_EQ(shown(Form::weekday), "Thursday");
    EXPECT_EQ(shown(Form::short_weekday), "Thu");
    EXPECT_EQ(shown(Form::clock), "15:05");
    EXPECT_EQ(shown(Form::weekday_and_clock), "Thursday 15:05");
    EXPECT_EQ(shown(Form::date_and_clock), "Thu 15 Jan 15:05");
    EXPECT_EQ(shown(Form::weekday_date_clock), "Thursday 15 Jan 15:05");
    EXPECT_EQ(shown(Form::weekday_and_date), "Thursday 15 Jan");
    EXPECT_EQ(shown(Form::full_date), "15 January 2026");
    EXPECT_EQ(shown(Form::iso), "2026-01-15T15:04:40");
}

TEST(moment, on_a_clock_of_twelve_hours) {
    const Language twelve{.twelve_hours = true};
    EXPECT_EQ(shown(Form::weekday_and_clock, twelve), "Thursday 3:05 PM");
    EXPECT_EQ(shown(Form::clock, twelve, "2026-01-15T00:10"), "12:10 AM");
    EXPECT_EQ(shown(Form::clock, twelve, "2026-01-15T12:00"), "12:00 PM");
}

TEST(moment, the_last_half_minute_of_a_day_belongs_to_the_next) {
    EXPECT_EQ(shown(Form::weekday_and_clock, english(), "2026-01-15T23:59:40"), "Friday 00:00");
}

TEST(moment, before_1970) {
    EXPECT_EQ(shown(Form::full_date, english(), "1969-12-31T23:00"), "31 December 1969");
}

}  // namespace
}  // namespace words
