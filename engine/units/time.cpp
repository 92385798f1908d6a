#include "units/time.hpp"

#include <cmath>

namespace units {

namespace {

std::chrono::sys_days day_holding(LocalTime time) {
    const auto days = static_cast<int>(std::floor(time.since_1970() / day));
    return std::chrono::sys_days(std::chrono::days(days));
}

}  // namespace

LocalTime local_time(std::chrono::year_month_day date, Duration after_midnight) {
    const auto days = std::chrono::sys_days(date).time_since_epoch().count();
    return LocalTime(static_cast<double>(days) * day + after_midnight);
}

std::chrono::year_month_day date_of(LocalTime time) {
    return day_holding(time);
}

Duration time_of_day(LocalTime time) {
    return time - midnight_before(time);
}

int day_of_year(std::chrono::year_month_day date) {
    const std::chrono::sys_days first = date.year() / std::chrono::January / 1;
    return static_cast<int>((std::chrono::sys_days(date) - first).count()) + 1;
}

LocalTime midnight_before(LocalTime time) {
    return LocalTime(std::floor(time.since_1970() / day) * day);
}

}  // namespace units
