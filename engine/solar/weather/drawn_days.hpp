// A sequence of daily clearness from numbers that were drawn elsewhere.
#pragma once

#include <span>
#include <vector>

#include "solar/weather/weather.hpp"

namespace solar {

// Clearness of as many local days as `days_drawn` has, from the one that holds `first`.
//   climate_drawn, days_drawn   of the month's mean and of each day: in the open interval 0 to 1,
//                               the greater the brighter
//   source                      method.md (40) to (43)
[[nodiscard]] std::vector<Clearness> daily_clearness(const Site& site, units::LocalTime first,
                                                     const WeatherModel& model,
                                                     double climate_drawn,
                                                     std::span<const double> days_drawn);

}  // namespace solar
