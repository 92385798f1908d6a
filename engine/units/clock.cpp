#include "units/clock.hpp"

#include <cassert>
#include <charconv>
#include <cstdint>
#include <optional>

#include <fmt/compile.h>

#include "units/quote.hpp"
#include "units/written/plain_letters.hpp"

namespace units {

namespace {

using words::Said;
using words::said;

Said date_remedy() {
    return said<"give local standard time, such as {example} or {date}">("2026-01-14T18:00:00",
                                                                         "2026-01-14");
}

Said time_remedy() {
    return said<"give a time of day from {first} to {last}, such as {example}">("00:00", "23:59",
                                                                                "06:00");
}

Said span_remedy() {
    return said<"give two times of day, such as {example}">("23:00-06:00");
}

tl::unexpected<Errors> refuse(Said found, Said remedy) {
    return fail({.where = "", .found = std::move(found), .remedy = std::move(remedy)});
}

// Takes so many digits off the front of the text.
std::optional<int> take_digits(std::string_view& text, std::size_t fewest, std::size_t most) {
    const std::size_t count = std::min(text.find_first_not_of("0123456789"), text.size());
    if (count < fewest || count > most) {
        return std::nullopt;
    }
    int number = 0;
    std::from_chars(text.data(), text.data() + count, number);
    text.remove_prefix(count);
    return number;
}

bool take(std::string_view& text, std::string_view mark) {
    const bool there = text.starts_with(mark);
    text.remove_prefix(there ? mark.size() : 0);
    return there;
}

struct HourAndMinute {
    int hour = 0;
    int minute = 0;
};

std::optional<HourAndMinute> take_hour_and_minute(std::string_view& text) {
    const std::optional<int> hours = take_digits(text, 1, 2);
    if (!hours || !take(text, ":")) {
        return std::nullopt;
    }
    const std::optional<int> minutes = take_digits(text, 2, 2);
    return minutes ? std::optional(HourAndMinute{*hours, *minutes}) : std::nullopt;
}

Duration since_midnight(HourAndMinute time) {
    return static_cast<double>(time.hour) * hour + static_cast<double>(time.minute) * minute;
}

// Seconds and their fraction, "07.25"; none when there are no digits.
std::optional<double> take_seconds(std::string_view& text) {
    const std::string_view start = text;
    if (!take_digits(text, 2, 2)) {
        return std::nullopt;
    }
    constexpr std::size_t to_the_nanosecond = 9;
    if (take(text, ".") && !take_digits(text, 1, to_the_nanosecond)) {
        return std::nullopt;
    }
    double seconds = 0.0;
    std::from_chars(start.data(), text.data(), seconds);
    return seconds;
}

std::optional<std::chrono::year_month_day> take_date(std::string_view& text) {
    const std::optional<int> year = take_digits(text, 4, 4);
    if (!year || !take(text, "-")) {
        return std::nullopt;
    }
    const std::optional<int> month = take_digits(text, 2, 2);
    if (!month || !take(text, "-")) {
        return std::nullopt;
    }
    const std::optional<int> day_of_month = take_digits(text, 2, 2);
    if (!day_of_month) {
        return std::nullopt;
    }
    return std::chrono::year(*year) / *month / *day_of_month;
}

// The time behind a date; nothing left over means midnight.
Result<Duration> time_behind_date(std::string_view whole, std::string_view text) {
    if (text.empty()) {
        return Duration();
    }
    const bool separated = take(text, "T") || take(text, " ") || take(text, "t");
    const std::optional<HourAndMinute> time = separated ? take_hour_and_minute(text) : std::nullopt;
    if (!time) {
        return refuse(said<"'{whole}' is not a date and time">(quote(whole)), date_remedy());
    }
    std::optional<double> seconds = 0.0;
    if (take(text, ":")) {
        seconds = take_seconds(text);
    }
    if (text.starts_with('Z') || text.starts_with('z') || text.starts_with('+') ||
        text.starts_with('-')) {
        return refuse(said<"'{whole}' names a time zone">(quote(whole)), date_remedy());
    }
    if (!seconds || !text.empty()) {
        return refuse(said<"'{whole}' is not a date and time">(quote(whole)), date_remedy());
    }
    if (time->hour > 23 || time->minute > 59 || *seconds >= 60.0) {
        return refuse(said<"'{whole}' has no such time of day">(quote(whole)), date_remedy());
    }
    return since_midnight(*time) + *seconds * second;
}

enum class Place { alone, start_of_span, end_of_span };

// A time of day that stands alone, or one end of a span.
Result<Duration> read_end(std::string_view whole, std::string_view text, Place place) {
    const bool alone = place == Place::alone;
    const Said remedy = alone ? time_remedy() : span_remedy();
    std::string_view left = text;
    const std::optional<HourAndMinute> time = take_hour_and_minute(left);
    if (!time || !left.empty()) {
        const Said wanted = alone ? said<"a time of day">() : said<"a span of the day">();
        return refuse(said<"'{whole}' is not {wanted}">(quote(whole), wanted), remedy);
    }
    const bool end_of_day = time->hour == 24 && time->minute == 0;
    if (end_of_day && place != Place::end_of_span) {
        return refuse(said<"'{whole}': 24:00 can only end a span">(quote(whole)),
                      said<"write 00:00 for midnight">());
    }
    if (time->minute > 59 || (time->hour > 23 && !end_of_day)) {
        return refuse(said<"'{whole}': a day has 24 hours of 60 minutes, so there is no {text}">(
                          quote(whole), quote(text)),
                      remedy);
    }
    return since_midnight(*time);
}

std::int64_t whole_minutes(Duration time) {
    return std::llround(time / minute);
}

std::string hours_and_minutes(std::int64_t minutes) {
    return fmt::format("{:02}:{:02}", minutes / 60, minutes % 60);
}

}  // namespace

Result<LocalTime> read_local_time(std::string_view text) {
    constexpr std::size_t longest = 60;  // bytes
    const std::string plain = text.size() > longest ? std::string(text) : in_plain_letters(text);
    std::string_view rest = plain;
    const std::optional<std::chrono::year_month_day> date = take_date(rest);
    if (!date || plain.size() > longest) {
        return refuse(said<"'{plain}' is not a date">(quote(plain)), date_remedy());
    }
    if (!date->ok() || date->year() < std::chrono::year(1)) {
        return refuse(said<"'{plain}' is not in the calendar">(quote(plain)), date_remedy());
    }
    return time_behind_date(plain, rest).map([&](Duration after_midnight) {
        return local_time(*date, after_midnight);
    });
}

std::string print(LocalTime time) {
    constexpr std::int64_t nanoseconds_of_a_second = 1'000'000'000;
    constexpr std::int64_t seconds_of_a_day = 86400;
    LocalTime midnight = midnight_before(time);
    std::int64_t nanoseconds = std::llround((time - midnight) / second * 1e9);
    if (nanoseconds >= seconds_of_a_day * nanoseconds_of_a_second) {
        nanoseconds -= seconds_of_a_day * nanoseconds_of_a_second;
        midnight = midnight + day;
    }
    const std::chrono::year_month_day date = date_of(midnight);
    const std::int64_t seconds = nanoseconds / nanoseconds_of_a_second;
    std::string text =
        fmt::format(FMT_COMPILE("{:04}-{:02}-{:02}T{}:{:02}"), static_cast<int>(date.year()),
                    static_cast<unsigned>(date.month()), static_cast<unsigned>(date.day()),
                    hours_and_minutes(seconds / 60), seconds % 60);
    if (nanoseconds % nanoseconds_of_a_second != 0) {
        text += fmt::format(".{:09}", nanoseconds % nanoseconds_of_a_second);
        text.erase(text.find_last_not_of('0') + 1);
    }
    return text;
}

Result<Duration> read_time_of_day(std::string_view text) {
    const std::string_view time = trimmed(text);
    return read_end(time, time, Place::alone);
}

Result<DailySpan> read_daily_span(std::string_view text) {
    const std::string_view whole = trimmed(text);
    const bool en_dash = whole.find("–") != std::string_view::npos;
    const std::string_view mark = en_dash ? "–" : "-";
    const std::size_t dash = whole.find(mark);
    if (dash == std::string_view::npos) {
        return refuse(said<"'{whole}' is not a span of the day">(quote(whole)), span_remedy());
    }
    const Result<Duration> from =
        read_end(whole, trimmed(whole.substr(0, dash)), Place::start_of_span);
    const Result<Duration> until =
        read_end(whole, trimmed(whole.substr(dash + mark.size())), Place::end_of_span);
    if (!from) {
        return fail(from.error());
    }
    if (!until) {
        return fail(until.error());
    }
    if (*from == *until) {
        return refuse(
            said<"'{whole}' ends when it begins, which may mean never or all day">(quote(whole)),
            said<"leave it out for never, write 00:00-24:00 for all day">());
    }
    return DailySpan{.from = *from, .until = *until};
}

std::string print(const DailySpan& span) {
    return show_time(span.from) + "-" + show_time(span.until);
}

Duration length_of(const DailySpan& span) {
    return span.until > span.from ? span.until - span.from : span.until + day - span.from;
}

bool holds(const DailySpan& span, Duration time_of_day) {
    if (span.until > span.from) {
        return time_of_day >= span.from && time_of_day < span.until;
    }
    return time_of_day >= span.from || time_of_day < span.until;
}

std::string show_clock(LocalTime time) {
    constexpr std::array weekdays = {"Sunday",   "Monday", "Tuesday", "Wednesday",
                                     "Thursday", "Friday", "Saturday"};
    constexpr std::array months = {"Jan", "Feb", "Mar", "Apr", "May", "Jun",
                                   "Jul", "Aug", "Sep", "Oct", "Nov", "Dec"};
    const LocalTime shown = LocalTime(std::round(time.since_1970() / minute) * minute);
    const std::chrono::year_month_day date = date_of(shown);
    const std::chrono::weekday weekday = std::chrono::sys_days(date);
    return fmt::format(
        "{} {} {} {}", weekdays.at(weekday.c_encoding()), static_cast<unsigned>(date.day()),
        months.at(static_cast<unsigned>(date.month()) - 1), show_time(time_of_day(shown)));
}

std::string show_time(Duration time_of_day) {
    assert(time_of_day >= Duration() && time_of_day <= day);
    return hours_and_minutes(whole_minutes(time_of_day));
}

}  // namespace units
