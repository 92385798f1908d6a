// What a weather file amounts to as a whole: sums, what is odd in it, and the site it describes.
#pragma once

#include <array>
#include <optional>
#include <string>
#include <vector>

#include "scenario/finding.hpp"
#include "solar/places/site.hpp"
#include "solar/weather/weather_file.hpp"
#include "units/quantities.hpp"

namespace solar {

// What a year amounts to.
struct WeatherSummary {
    std::string station;
    bool letters_guessed = false;  // of its name
    int hours = 0;
    int missing = 0;     // hours with the sun up without usable light: they count as dark
    int worked_out = 0;  // hours in which a kind of light was missing and follows from the others
    int without_air = 0;
    // What no sky does, in hours whose three kinds stand in the file.
    int unbalanced = 0;         // direct and diffuse light miss the global by more than 100 W/m2
    int lit_at_night = 0;       // more than 20 W/m2 while the sun is down the whole hour
    int brighter_than_sun = 0;  // more light than reaches the top of the air
    int leaps = 0;              // air more than 8 K off both hours beside it
    // How much later the sun must be looked at for the light to fit it best, in half hours; zero
    // unless that fits a good deal better than the middle of each hour.
    units::Duration sun_late{};
    // Mean difference of direct and diffuse light from the global, over the global, after that
    // shift; 0.005 where the three were made from one another.
    double misfit = 0.0;
    units::Irradiation global{};
    units::Irradiation direct{};
    units::Irradiation diffuse{};
    std::optional<units::Temperature> coldest;
    std::optional<units::Temperature> mean;
    std::optional<units::Temperature> warmest;
    units::Irradiation worst_day{};  // on level ground
    int worst_day_month = 1;
    int worst_day_date = 1;
    units::Irradiation worst_three_days{};  // in a row, their sum
    int worst_three_days_month = 1;         // of the first of them
    int worst_three_days_date = 1;
    // Direct light on level ground plus diffuse, over global, with the sun at the middle of each
    // hour, and at its end. Near 1 when the clock is right.
    double closure = 0.0;
    double closure_at_the_hours_end = 0.0;
    bool half_an_hour_off = false;  // the end fits better by more than 0.005

    std::array<units::Irradiation, 12> monthly{};  // global of a mean day of each month
};

[[nodiscard]] WeatherSummary summary(const WeatherYear& year);

// What is odd in the file as a whole; empty when nothing is.
struct Oddity {
    scenario::Severity severity;
    words::Said text;
    words::Said mend;  // empty where nothing can be done
};
[[nodiscard]] std::vector<Oddity> oddities_of(const WeatherSummary& sums);

// Mean of the ground's albedo over the hours that give it by day; absent when none does.
[[nodiscard]] std::optional<Albedo> mean_ground(const WeatherYear& year);

// Monthly means; absent when a month has no hour with a temperature.
[[nodiscard]] std::optional<std::array<units::Temperature, 12>> monthly_temperature(
    const WeatherYear& year);

// The site a file describes: its months' means as clearness and temperature.
[[nodiscard]] Site site_of(const WeatherYear& year);

}  // namespace solar
