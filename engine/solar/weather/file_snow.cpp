#include "solar/weather/file_snow.hpp"

#include <algorithm>
#include <array>
#include <limits>

#include "solar/recharge.hpp"

namespace solar {

using namespace units;

namespace {

constexpr Length inch = 0.0254 * metre;
// Depths stand in whole centimetres: three of them make an inch.
constexpr Length least_growth = 0.98 * inch;
// Deeper than any snow: nothing grows over it.
constexpr Length not_known = std::numeric_limits<double>::infinity() * metre;

int days_before(int month) {
    constexpr std::array before{0, 31, 59, 90, 120, 151, 181, 212, 243, 273, 304, 334};
    return before[std::size_t(month - 1)];
}

}  // namespace

std::vector<bool> days_of_snowfall(const WeatherYear& year) {
    const auto lies = [](const HourOfWeather& row) {
        return row.snow.value_or(Length{}) > Length{};
    };
    if (std::ranges::none_of(year.hours, lies)) return {};
    std::vector<bool> falls;
    Length before = not_known;
    for (std::size_t first = 0; first + 24 <= year.hours.size(); first += 24) {
        // Months come from different years: what lay at the end of the last one says nothing.
        if (year.hours[first].date == 1) before = not_known;
        bool grows = false;
        for (std::size_t i = first; i < first + 24; ++i) {
            const Length depth = year.hours[i].snow.value_or(not_known);
            grows = grows || (depth < not_known && depth - before >= least_growth);
            // Within a day snow settles; it is held against the least that lay.
            before = std::min(before, depth);
        }
        if (year.hours[first + 23].snow) before = *year.hours[first + 23].snow;
        falls.push_back(grows);
    }
    return falls;
}

std::size_t day_of(const WeatherYear& year, LocalTime when) {
    const std::chrono::year_month_day date = date_of(when);
    const int month = int(unsigned(date.month()));
    int of_month = int(unsigned(date.day()));
    const bool leap = year.hours.size() == 8784;
    if (!leap && month == 2) of_month = std::min(of_month, 28);
    return std::size_t(days_before(month) + of_month - 1 + (leap && month > 2));
}

Probability snowy_days(const WeatherYear& year, LocalTime starts, Duration lasts) {
    int days = 0;
    int snowy = 0;
    const LocalTime until = starts + lasts + double(season_reaches) * day;
    for (LocalTime midnight = midnight_before(starts) - double(season_reaches) * day;
         midnight < until; midnight = midnight + day, ++days)
        snowy += year.snowfall[day_of(year, midnight)];
    return Probability(double(snowy) / double(days));
}

}  // namespace solar
