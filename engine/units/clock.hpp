// Dates, times of day and daily spans as text.
#pragma once

#include <concepts>
#include <string>
#include <string_view>

#include "units/result.hpp"
#include "units/time.hpp"

namespace units {

// Local standard time: "2026-01-14T18:00:00", "2026-01-14 18:00", or a date alone for its midnight.
// Years 1 to 9999. An offset or Z behind it is refused: the engine has no time zones.
[[nodiscard]] Result<LocalTime> read_local_time(std::string_view text);

// "2026-01-14T18:00:00", with a fraction of a second where there is one, to the nanosecond.
[[nodiscard]] std::string print(LocalTime time);

// "06:00", from 00:00 to 23:59, as time since midnight.
[[nodiscard]] Result<Duration> read_time_of_day(std::string_view text);

// A part of every day. It runs over midnight when it ends before it begins.
struct DailySpan {
    Duration from{};   // 0 to less than 24 h
    Duration until{};  // 0 to 24 h, not equal to from

    friend bool operator==(const DailySpan&, const DailySpan&) = default;
};

// "23:00-06:00"; "00:00-24:00" is the whole day, and equal ends are refused.
[[nodiscard]] Result<DailySpan> read_daily_span(std::string_view text);

// "23:00-06:00", in whole minutes.
[[nodiscard]] std::string print(const DailySpan& span);

[[nodiscard]] Duration length_of(const DailySpan& span);  // more than 0, to 24 h
[[nodiscard]] bool holds(const DailySpan& span,
                         Duration time_of_day);  // from counts, until does not

// "Thursday 15 Jan 03:00", to the nearest minute.
[[nodiscard]] std::string show_clock(LocalTime time);

// "03:00", to the nearest minute; takes 0 to 24 h, and shows "24:00" for the end of a day.
[[nodiscard]] std::string show_time(Duration time_of_day);

template <std::same_as<LocalTime> Time>
[[nodiscard]] Result<Time> read(std::string_view text) {
    return read_local_time(text);
}

template <std::same_as<DailySpan> Span>
[[nodiscard]] Result<Span> read(std::string_view text) {
    return read_daily_span(text);
}

}  // namespace units
