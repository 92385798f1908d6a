#include "notes/moments.hpp"

#include <array>
#include <chrono>

#include "units/clock.hpp"

namespace notes {
namespace {

using units::Duration;
using units::LocalTime;

constexpr std::array<std::string_view, 7> weekdays{"sunday",   "monday", "tuesday", "wednesday",
                                                   "thursday", "friday", "saturday"};

// "thursday" and "thu", 0 is Sunday.
std::optional<int> weekday_of(std::string_view word) {
    for (std::size_t i = 0; i < weekdays.size(); ++i)
        if (word == weekdays[i] || (word.size() == 3 && weekdays[i].starts_with(word)))
            return static_cast<int>(i);
    return std::nullopt;
}

int weekday_of(LocalTime time) {
    return static_cast<int>(
        std::chrono::weekday(std::chrono::sys_days(units::date_of(time))).c_encoding());
}

// "21:30", "9:30", and how many words it takes with "pm" behind it.
struct TimeOfDay {
    Duration since_midnight{};
    std::size_t words = 1;
};

std::optional<TimeOfDay> time_of_day_at(const Words& words, std::size_t at) {
    std::string text(words.plain(at));
    std::string half;
    if (text.ends_with("am") || text.ends_with("pm")) {
        half = text.substr(text.size() - 2);
        text.resize(text.size() - 2);
    }
    if (text.size() == 4 && text[1] == ':') text = '0' + text;
    const auto time = units::read_time_of_day(text);
    if (!time || text.find(':') == std::string::npos) return std::nullopt;
    TimeOfDay found{.since_midnight = *time};
    if (half.empty() && (words.plain(at + 1) == "pm" || words.plain(at + 1) == "am")) {
        half = words.plain(at + 1);
        found.words = 2;
    }
    if (half.empty()) return found;
    constexpr Duration noon = 12.0 * units::hour;
    if (*time >= noon + units::hour) return std::nullopt;  // "21:30 pm"
    const Duration of_half = *time >= noon ? *time - noon : *time;
    found.since_midnight = half == "pm" ? of_half + noon : of_half;
    return found;
}

LocalTime of_no_day(Duration time, Day day, LocalTime now) {
    const LocalTime today = units::midnight_before(now) + time;
    if (day == Day::next) return today > now ? today : today + units::day;
    return today > now + clocks_differ ? today - units::day : today;
}

LocalTime of_weekday(int weekday, Duration time, Day day, LocalTime now) {
    LocalTime found = units::midnight_before(now) + time;
    const double step = day == Day::next ? 1.0 : -1.0;
    const auto passes = [&] {
        return day == Day::next ? found > now : !(found > now + clocks_differ);
    };
    for (int tried = 0; tried < 9 && !(weekday_of(found) == weekday && passes()); ++tried)
        found = found + step * units::day;
    return found;
}

}  // namespace

std::optional<LocalTime> take_moment(Words& words, std::size_t at, Day day, LocalTime now) {
    if (!words.is_free(at)) return std::nullopt;
    const std::string first(words.plain(at));
    if (first == "now") {
        words.take(at);
        return now;
    }
    if (const auto whole = units::read_local_time(words.written(at))) {
        // A date, and the time that may follow it.
        const bool with_time = first.find(':') != std::string::npos;
        const auto time = with_time ? std::nullopt : time_of_day_at(words, at + 1);
        words.take(at, time ? 1 + time->words : 1);
        return time ? *whole + time->since_midnight : *whole;
    }
    const auto weekday = weekday_of(first);
    const bool named = first == "yesterday" || first == "today" || first == "tomorrow" || weekday;
    if (named) {
        const auto time = time_of_day_at(words, at + 1);
        if (!time) return std::nullopt;
        words.take(at, 1 + time->words);
        const LocalTime today = units::midnight_before(now) + time->since_midnight;
        if (weekday) return of_weekday(*weekday, time->since_midnight, day, now);
        return first == "today"       ? today
               : first == "yesterday" ? today - units::day
                                      : today + units::day;
    }
    const auto time = time_of_day_at(words, at);
    if (!time) return std::nullopt;
    words.take(at, time->words);
    return of_no_day(time->since_midnight, day, now);
}

std::optional<LocalTime> take_moment(Words& words, Day day, LocalTime now) {
    for (std::size_t at = 0; at < words.size(); ++at)
        if (const auto found = take_moment(words, at, day, now)) return found;
    return std::nullopt;
}

}  // namespace notes
