// Times as people say them, on the wall clock of the place.
#pragma once

#include <string>

#include "answers/answer.hpp"
#include "units/quantities.hpp"
#include "units/time.hpp"
#include "words/said.hpp"

namespace answers {

[[nodiscard]] words::Said weekday(units::LocalTime time);        // "Thursday"
[[nodiscard]] words::Said short_weekday(units::LocalTime time);  // "Thu"
[[nodiscard]] std::string time_in_iso(units::LocalTime time);    // "2026-01-15T03:00:00", rounded
[[nodiscard]] words::Said weekday_and_time(
    units::LocalTime time);                                      // "Thursday 03:00", to the minute
[[nodiscard]] words::Said date_and_time(units::LocalTime time);  // "Wed 14 Jan 18:00"
// A point in time as a value: ISO for a program, date and time for a person.
[[nodiscard]] Value time_value(units::LocalTime time);

// The end of a time that began at `starts`, no sharper than it is known:
//   under 6 h    to 5 minutes, downwards      "Wednesday 21:35"
//   under 48 h   to the hour, downwards       "Thursday 03:00"
//   longer       to the part of the day       "about noon on Sunday", "the early hours of Monday",
//                                             "about the end of Saturday"
// From the seventh day on the date is added, because the weekday comes round again.
[[nodiscard]] words::Said end_in_words(units::LocalTime starts, units::Duration lasts);

// "35 min", "9 h", "26 h", "3.5 days": the length with the same sharpness.
[[nodiscard]] words::Said length_in_words(units::Duration length);

// "Thursday", and "Thursday 22 Jan" once a week has passed since the start.
[[nodiscard]] words::Said day_name(units::LocalTime time, units::LocalTime starts);

// "one" … "twelve", then digits.
[[nodiscard]] words::Said number_in_words(int number);

}  // namespace answers
