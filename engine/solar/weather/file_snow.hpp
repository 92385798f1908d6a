// On which days of a weather file snow falls.
#pragma once

#include <vector>

#include "solar/weather/weather_file.hpp"
#include "units/quantities.hpp"
#include "units/time.hpp"

namespace solar {

// Days of a year, in its order, on which the snow that lies grows by an inch or more. method.md
// (53)
//   gives  nothing where no hour has a depth above nought: then the file does not tell of snow
[[nodiscard]] std::vector<bool> days_of_snowfall(const WeatherYear& year);

// Place of a local day in the year's order. 29 February is the 28th where the year has none.
[[nodiscard]] std::size_t day_of(const WeatherYear& year, units::LocalTime when);

// Share of such days among those that the start dates of an outage meet.
//   takes  a year that tells of snow
[[nodiscard]] units::Probability snowy_days(const WeatherYear& year, units::LocalTime starts,
                                            units::Duration lasts);

}  // namespace solar
