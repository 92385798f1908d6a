// The sun over an hour of a weather file, and the light that the hour lacks.
#pragma once

#include "solar/weather/weather_file.hpp"
#include "units/quantities.hpp"

namespace solar {

// Of the sun's zenith so many hours before the hour ends; 0 while it is down.
[[nodiscard]] double cos_zenith_at(const WeatherYear& year, const HourOfWeather& row,
                                   double hours_before_end);

// Mean over the hour of that cosine.
[[nodiscard]] double height_of_hour(const WeatherYear& year, const HourOfWeather& row);

// Square on to the sun, at the top of the air.
[[nodiscard]] units::Irradiance outside_the_air(const HourOfWeather& row);

// The kinds of light that are missing follow from the others by G = G_n cos z + G_d; global light
// alone is split by (17). method.md (47)
void complete_light(const WeatherYear& year, HourOfWeather& row);

}  // namespace solar
