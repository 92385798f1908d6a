// Points in time. An instant is the same for everybody; a local time is what the wall clock
// shows at the place, standard time all year. No time-zone names: the offset is a number.
#pragma once

#include <chrono>

#include "units/quantities.hpp"

namespace units {

// Seconds after 1970-01-01 00:00 of its own clock.
template <class Clock>
class TimePoint {
  public:
    constexpr TimePoint() = default;
    constexpr explicit TimePoint(Duration since_1970) : since_1970_(since_1970) {}
    [[nodiscard]] constexpr Duration since_1970() const { return since_1970_; }
    friend constexpr TimePoint operator+(TimePoint a, Duration b) {
        return TimePoint(a.since_1970_ + b);
    }
    friend constexpr TimePoint operator-(TimePoint a, Duration b) {
        return TimePoint(a.since_1970_ - b);
    }
    friend constexpr Duration operator-(TimePoint a, TimePoint b) {
        return a.since_1970_ - b.since_1970_;
    }
    friend constexpr bool operator==(TimePoint a, TimePoint b) {
        return a.since_1970_ == b.since_1970_;
    }
    friend constexpr bool operator<(TimePoint a, TimePoint b) {
        return a.since_1970_ < b.since_1970_;
    }
    friend constexpr bool operator>(TimePoint a, TimePoint b) { return b < a; }
    friend constexpr bool operator<=(TimePoint a, TimePoint b) { return !(b < a); }
    friend constexpr bool operator>=(TimePoint a, TimePoint b) { return !(a < b); }

  private:
    Duration since_1970_{};
};

using Instant = TimePoint<struct UniversalClock>;   // UTC
using LocalTime = TimePoint<struct StandardClock>;  // local standard time at the place

// utc_offset is positive east of Greenwich: -6 h in Chicago.
[[nodiscard]] constexpr Instant instant(LocalTime local, Duration utc_offset) {
    return Instant(local.since_1970() - utc_offset);
}

[[nodiscard]] constexpr LocalTime local_time(Instant instant, Duration utc_offset) {
    return LocalTime(instant.since_1970() + utc_offset);
}

[[nodiscard]] LocalTime local_time(std::chrono::year_month_day date, Duration after_midnight);
[[nodiscard]] std::chrono::year_month_day date_of(LocalTime time);
[[nodiscard]] Duration time_of_day(LocalTime time);               // 0 to less than 24 h
[[nodiscard]] int day_of_year(std::chrono::year_month_day date);  // 1 on 1 January
[[nodiscard]] LocalTime midnight_before(LocalTime time);  // the same time when it is midnight

}  // namespace units
