#include <array>
#include <chrono>
#include <cmath>
#include <cstdint>

#include <fmt/format.h>

#include "words/language.hpp"

namespace words {

namespace {

// A minute of the local clock, taken apart.
struct Clock {
    std::chrono::year_month_day date;
    unsigned weekday;  // 0 on Sunday
    int hour;
    int minute;
    int second;
};

Clock taken_apart(double since_1970, double step) {
    const auto whole = std::llround(since_1970 / step) * std::llround(step);
    constexpr std::int64_t day = 86400;
    const std::int64_t days = whole >= 0 ? whole / day : -((day - 1 - whole) / day);
    const auto left = static_cast<int>(whole - days * day);
    const std::chrono::sys_days date{std::chrono::days(days)};
    return {.date = date,
            .weekday = std::chrono::weekday(date).c_encoding(),
            .hour = left / 3600,
            .minute = left / 60 % 60,
            .second = left % 60};
}

const Said& weekday(const Clock& clock) {
    static const std::array names{said<"Sunday">(),    said<"Monday">(),   said<"Tuesday">(),
                                  said<"Wednesday">(), said<"Thursday">(), said<"Friday">(),
                                  said<"Saturday">()};
    return names[clock.weekday];
}

const Said& short_weekday(const Clock& clock) {
    static const std::array names{said<"{?weekday}Sun">(), said<"Mon">(), said<"Tue">(), said<"Wed">(),
                                  said<"Thu">(), said<"Fri">(), said<"Sat">()};
    return names[clock.weekday];
}

const Said& short_month(const Clock& clock) {
    static const std::array names{said<"Jan">(), said<"Feb">(), said<"Mar">(), said<"Apr">(),
                                  said<"May">(), said<"Jun">(), said<"Jul">(), said<"Aug">(),
                                  said<"Sep">(), said<"Oct">(), said<"Nov">(), said<"Dec">()};
    return names[static_cast<unsigned>(clock.date.month()) - 1];
}

const Said& long_month(const Clock& clock) {
    static const std::array names{said<"January">(), said<"February">(), said<"March">(),
                                  said<"April">(),   said<"May">(),      said<"June">(),
                                  said<"July">(),    said<"August">(),   said<"September">(),
                                  said<"October">(), said<"November">(), said<"December">()};
    return names[static_cast<unsigned>(clock.date.month()) - 1];
}

Said time_of_day(const Language& language, const Clock& clock) {
    if (!language.twelve_hours) return fmt::format("{:02}:{:02}", clock.hour, clock.minute);
    const int hour = clock.hour % 12 == 0 ? 12 : clock.hour % 12;
    return fmt::format("{}:{:02} {}", hour, clock.minute, clock.hour < 12 ? "AM" : "PM");
}

Said day_and_month(const Clock& clock) {
    return said<"{day} {month}">(static_cast<unsigned>(clock.date.day()), short_month(clock));
}

Said put(const Language& language, Moment::Form form, const Clock& at) {
    using enum Moment::Form;
    switch (form) {
        case weekday:
            return words::weekday(at);
        case short_weekday:
            return words::short_weekday(at);
        case Moment::Form::month:
            return short_month(at);
        case day_and_month:
            return words::day_and_month(at);
        case weekday_and_date:
            return said<"{weekday} {date}">(words::weekday(at), words::day_and_month(at));
        case short_weekday_date:
            return said<"{weekday} {date}">(words::short_weekday(at), words::day_and_month(at));
        case Moment::Form::clock:
            return time_of_day(language, at);
        case weekday_and_clock:
            return said<"{weekday} {time}">(words::weekday(at), time_of_day(language, at));
        case date_and_clock:
            return said<"{weekday} {date} {time}">(
                words::short_weekday(at), words::day_and_month(at), time_of_day(language, at));
        case weekday_date_clock:
            return said<"{weekday} {date} {time}">(words::weekday(at), words::day_and_month(at),
                                                   time_of_day(language, at));
        case full_date:
            return said<"{day} {month} {year}">(static_cast<unsigned>(at.date.day()),
                                                long_month(at), static_cast<int>(at.date.year()));
        case iso:
            break;
    }
    return fmt::format("{:04}-{:02}-{:02}T{:02}:{:02}:{:02}", static_cast<int>(at.date.year()),
                       static_cast<unsigned>(at.date.month()), static_cast<unsigned>(at.date.day()),
                       at.hour, at.minute, at.second);
}

}  // namespace

std::string in(const Language& language, const Moment& moment) {
    const double step = moment.form == Moment::Form::iso ? 1.0 : 60.0;
    return in(language, put(language, moment.form, taken_apart(moment.since_1970, step)));
}

}  // namespace words
