// Hourly weather files a person brings along: TMY3 comma-separated text and EPW.
//   formats  [TMY3 manual], [EPW]: positions and codes of what is missing
#pragma once

#include <array>
#include <optional>
#include <string>
#include <string_view>
#include <vector>

#include "scenario/finding.hpp"
#include "scenario/place.hpp"
#include "solar/site.hpp"
#include "solar/sun_position.hpp"
#include "units/result.hpp"

namespace solar {

// Where the light of an hour comes from.
enum class LightFrom {
    file,        // all three kinds as they stand there, or a night
    worked_out,  // a kind was missing and follows from the others; method.md (47)
    nowhere,     // the sun is up and nothing follows: the hour counts as dark
};

// One hour of the file's own standard time. Absent means the file holds its code for "missing";
// after reading, light is absent only where it is known from nowhere.
struct HourOfWeather {
    int month = 1;                             // 1 to 12
    int date = 1;                              // 1 to 31
    int hour = 1;                              // 1 to 24: the hour that ends then
    std::optional<units::Irradiance> global;   // on level ground, mean of the hour
    std::optional<units::Irradiance> direct;   // square on to the sun
    std::optional<units::Irradiance> diffuse;  // of the sky on level ground
    std::optional<units::Temperature> air;
    std::optional<Albedo> ground;
    LightFrom light = LightFrom::file;
};

enum class WeatherFormat { tmy3, epw };

// A year without a number: months may come from different years. 8760 hours in the file's order,
// or 8784 with a 29 February.
struct WeatherYear {
    WeatherFormat format = WeatherFormat::tmy3;
    std::string station;  // fit to be shown; says so where its letters were taken for Latin-1
    Coordinates at;
    units::Duration utc_offset{};
    units::Length elevation{};
    std::vector<HourOfWeather> hours;
};

// From the text of a file; the format is seen from its first line. Kinds of light that are missing
// are worked out where they can be.
//   file   its name, for errors
//   fails  with every bad cell up to the first 20, each with its line (1 is the first) and, in
//          `where`, the row's column heading; with the number of hours when it is not a year's;
//          with the month, and the line it begins on, whose light is missing for the most part or
//          is more than the sun can give there.
//          No error holds anything that stands in the file
[[nodiscard]] units::Result<WeatherYear> read_weather(std::string_view text,
                                                      const std::string& file);
//   fails  also as scenario::bytes_of_file does, and when the file is empty
[[nodiscard]] units::Result<WeatherYear> read_weather_file(const std::string& path);
// The file that place.weather_file names; there must be such a key.
//   folder  of the scenario; empty: the working folder
//   fails   also when it lies outside, as scenario::path_of_named_file tells
[[nodiscard]] units::Result<WeatherYear> read_weather_of(const scenario::Place& place,
                                                         const std::string& folder);
// Its bytes as they are, read or not; fails where there are none to be had.
[[nodiscard]] units::Result<std::string> bytes_of_weather_of(const scenario::Place& place,
                                                             const std::string& folder);

// What a year amounts to.
struct WeatherSummary {
    std::string station;
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

// What is odd in the file as a whole, in words for a person; empty when nothing is.
struct Oddity {
    scenario::Severity severity;
    std::string text;
    std::string mend;
};
[[nodiscard]] std::vector<Oddity> oddities_of(const WeatherSummary& sums);

// Mean of the ground's albedo over the hours that give it by day; absent when none does.
[[nodiscard]] std::optional<Albedo> mean_ground(const WeatherYear& year);

// Monthly means; absent when a month has no hour with a temperature.
[[nodiscard]] std::optional<std::array<units::Temperature, 12>> monthly_temperature(
    const WeatherYear& year);

// Mean of the file's hours with a temperature on that date; absent when there is none.
[[nodiscard]] std::optional<units::Temperature> mean_temperature_on(const WeatherYear& year,
                                                                    units::LocalTime midnight);

// The site a file describes: its months' means as clearness and temperature.
[[nodiscard]] Site site_of(const WeatherYear& year);

}  // namespace solar
