#include "answers/clock_words.hpp"

#include <cmath>

#include "units/clock.hpp"
#include "units/said.hpp"

namespace answers {

namespace {

using units::Duration;
using units::LocalTime;
using words::Said;
using words::said;
using Form = words::Moment::Form;

LocalTime to_nearest(LocalTime time, Duration step) {
    return LocalTime(std::round(time.since_1970() / step) * step);
}

// A millisecond of slack keeps an exact hour that arithmetic left a hair short.
LocalTime downwards(LocalTime time, Duration step) {
    return LocalTime(std::floor((time.since_1970() + 0.001 * units::second) / step) * step);
}

Said at(LocalTime time, Form form) {
    return said<"{when}">(units::moment(time, form));
}

// Noon and midnight within an hour, and the four parts of the day between them.
Said part_of_day(LocalTime time, LocalTime starts) {
    const double hours = units::time_of_day(time) / units::hour;
    if (hours < 1.0 || hours >= 23.0) {
        return said<"about the end of {day}">(day_name(time - 6.0 * units::hour, starts));
    }
    const Said day = day_name(time, starts);
    if (hours < 6.0) return said<"the early hours of {day}">(day);
    if (hours < 11.0) return said<"the morning of {day}">(day);
    if (hours <= 13.0) return said<"about noon on {day}">(day);
    if (hours < 18.0) return said<"the afternoon of {day}">(day);
    return said<"the evening of {day}">(day);
}

}  // namespace

Said day_name(LocalTime time, LocalTime starts) {
    const bool of_the_first_week = time - units::midnight_before(starts) < 7.0 * units::day;
    // One day is one thing to say, whatever the hour.
    return at(units::midnight_before(time),
              of_the_first_week ? Form::weekday : Form::weekday_and_date);
}

Said weekday(LocalTime time) {
    return at(time, Form::weekday);
}

Said short_weekday(LocalTime time) {
    return at(time, Form::short_weekday);
}

std::string time_in_iso(LocalTime time) {
    return units::print(to_nearest(time, units::second));
}

Value time_value(LocalTime time) {
    return {Code{.code = time_in_iso(time), .said = date_and_time(time), .is_time = true}};
}

Said weekday_and_time(LocalTime time) {
    return at(time, Form::weekday_and_clock);
}

Said date_and_time(LocalTime time) {
    return at(time, Form::date_and_clock);
}

Said end_in_words(LocalTime starts, Duration lasts) {
    const LocalTime end = starts + lasts;
    if (lasts >= 48.0 * units::hour) return part_of_day(end, starts);
    const LocalTime rounded =
        downwards(end, lasts < 6.0 * units::hour ? 5.0 * units::minute : units::hour);
    return said<"{day} {time}">(day_name(rounded, starts), units::moment(rounded, Form::clock));
}

Said length_in_words(Duration length) {
    if (length < 2.0 * units::hour) {
        const auto minutes = std::floor(length / units::minute + 1e-6) * units::minute;
        return said<"{time}">(units::amount_in(minutes, "min", 0));
    }
    if (length < 48.0 * units::hour) {
        const auto hours = std::floor(length / units::hour + 1e-6) * units::hour;
        return said<"{time}">(units::amount_in(hours, "h", 0));
    }
    const double half_days = std::round(length / (0.5 * units::day));
    return said<"{n} days">(words::Number{.value = half_days / 2.0, .digits = 6});
}

Said number_in_words(int number) {
    return said<"{n}">(words::in_words(number));
}

}  // namespace answers
