// Times as people say them, on the wall clock of the place.
#pragma once

#include <string>

#include "units/quantities.hpp"
#include "units/time.hpp"

namespace answers {

[[nodiscard]] std::string weekday(units::LocalTime time);        // "Thursday"
[[nodiscard]] std::string short_weekday(units::LocalTime time);  // "Thu"
[[nodiscard]] std::string time_in_iso(units::LocalTime time);    // "2026-01-15T03:00:00", rounded
[[nodiscard]] std::string weekday_and_time(
    units::LocalTime time);                                      // "Thursday 03:00", to the minute
[[nodiscard]] std::string date_and_time(units::LocalTime time);  // "Wed 14 Jan 18:00"

// The end of a time that began at `starts`, no sharper than it is known:
//   under 6 h    to 5 minutes, downwards      "Wednesday 21:35"
//   under 48 h   to the hour, downwards       "Thursday 03:00"
//   longer       to the part of the day       "about noon on Sunday", "the early hours of Monday",
//                                             "about the end of Saturday"
// From the seventh day on the date is added, because the weekday comes round again.
[[nodiscard]] std::string end_in_words(units::LocalTime starts, units::Duration lasts);

// "35 min", "9 h", "26 h", "3.5 days": the length with the same sharpness.
[[nodiscard]] std::string length_in_words(units::Duration length);

// "one" … "twelve", then digits.
[[nodiscard]] std::string number_in_words(int number);

}  // namespace answers
