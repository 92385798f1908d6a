#include "answers/clock_words.hpp"

#include <array>
#include <chrono>
#include <cmath>
#include <cstdlib>

#include <fmt/format.h>

#include "units/clock.hpp"

namespace answers {

namespace {

using units::Duration;
using units::LocalTime;

constexpr std::array<std::string_view, 7> weekdays{"Sunday",   "Monday", "Tuesday", "Wednesday",
                                                   "Thursday", "Friday", "Saturday"};
constexpr std::array<std::string_view, 12> months{"Jan", "Feb", "Mar", "Apr", "May", "Jun",
                                                  "Jul", "Aug", "Sep", "Oct", "Nov", "Dec"};

std::string_view weekday_name(LocalTime time) {
    return weekdays[std::chrono::weekday(std::chrono::sys_days(units::date_of(time))).c_encoding()];
}

std::string day_and_month(LocalTime time) {
    const auto date = units::date_of(time);
    return fmt::format("{} {}", static_cast<unsigned>(date.day()),
                       months[static_cast<unsigned>(date.month()) - 1]);
}

LocalTime to_nearest(LocalTime time, Duration step) {
    return LocalTime(std::round(time.since_1970() / step) * step);
}

// A millisecond of slack keeps an exact hour that arithmetic left a hair short.
LocalTime downwards(LocalTime time, Duration step) {
    return LocalTime(std::floor((time.since_1970() + 0.001 * units::second) / step) * step);
}

std::string hour_and_minute(LocalTime time) {
    const int minutes = static_cast<int>(std::lround(units::time_of_day(time) / units::minute));
    return fmt::format("{:02}:{:02}", minutes / 60, minutes % 60);
}

// "Thursday", and "Thursday 22 Jan" once a week has passed since the start.
std::string day_name(LocalTime time, LocalTime starts) {
    if (time - units::midnight_before(starts) < 7.0 * units::day) {
        return std::string(weekday_name(time));
    }
    return fmt::format("{} {}", weekday_name(time), day_and_month(time));
}

// Noon and midnight within an hour, and the four parts of the day between them.
std::string part_of_day(LocalTime time, LocalTime starts) {
    const double hours = units::time_of_day(time) / units::hour;
    if (hours < 1.0 || hours >= 23.0) {
        return fmt::format("about the end of {}", day_name(time - 6.0 * units::hour, starts));
    }
    const std::string day = day_name(time, starts);
    if (hours < 6.0) {
        return fmt::format("the early hours of {}", day);
    }
    if (hours < 11.0) {
        return fmt::format("the morning of {}", day);
    }
    if (hours <= 13.0) {
        return fmt::format("about noon on {}", day);
    }
    return fmt::format("the {} of {}", hours < 18.0 ? "afternoon" : "evening", day);
}

}  // namespace

std::string weekday(LocalTime time) {
    return std::string(weekday_name(time));
}

std::string short_weekday(LocalTime time) {
    return std::string(weekday_name(time).substr(0, 3));
}

std::string time_in_iso(LocalTime time) {
    return units::print(to_nearest(time, units::second));
}

std::string weekday_and_time(LocalTime time) {
    const LocalTime rounded = to_nearest(time, units::minute);
    return fmt::format("{} {}", weekday_name(rounded), hour_and_minute(rounded));
}

std::string date_and_time(LocalTime time) {
    const LocalTime rounded = to_nearest(time, units::minute);
    return fmt::format("{} {} {}", short_weekday(rounded), day_and_month(rounded),
                       hour_and_minute(rounded));
}

std::string end_in_words(LocalTime starts, Duration lasts) {
    const LocalTime end = starts + lasts;
    if (lasts < 48.0 * units::hour) {
        const LocalTime rounded =
            downwards(end, lasts < 6.0 * units::hour ? 5.0 * units::minute : units::hour);
        return fmt::format("{} {}", day_name(rounded, starts), hour_and_minute(rounded));
    }
    return part_of_day(end, starts);
}

std::string length_in_words(Duration length) {
    if (length < 2.0 * units::hour) {
        return fmt::format("{:.0f} min", std::floor(length / units::minute + 1e-6));
    }
    if (length < 48.0 * units::hour) {
        return fmt::format("{:.0f} h", std::floor(length / units::hour + 1e-6));
    }
    const double half_days = std::round(length / (0.5 * units::day));
    return fmt::format("{:g} days", half_days / 2.0);
}

std::string number_in_words(int number) {
    constexpr std::array<std::string_view, 12> words{"one",  "two", "three",  "four",
                                                     "five", "six", "seven",  "eight",
                                                     "nine", "ten", "eleven", "twelve"};
    if (number >= 1 && number <= static_cast<int>(words.size())) {
        return std::string(words[static_cast<std::size_t>(number - 1)]);
    }
    return std::to_string(number);
}

}  // namespace answers
