// Hourly weather files a person brings along: TMY3 comma-separated text, EPW, and the hourly year
// of the National Solar Radiation Data Base.
//   formats  [TMY3 manual], [EPW], [NSRDB]: positions and codes of what is missing
#pragma once

#include <optional>
#include <string>
#include <string_view>
#include <vector>

#include "scenario/place.hpp"
#include "solar/places/site.hpp"
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
    std::optional<units::Length> snow;  // lying on the ground, EPW alone
    LightFrom light = LightFrom::file;
};

enum class WeatherFormat { tmy3, epw, nsrdb };

// A year without a number: months may come from different years. 8760 hours in the file's order,
// or 8784 with a 29 February.
struct WeatherYear {
    WeatherFormat format = WeatherFormat::tmy3;
    std::string station;           // fit to be shown
    bool letters_guessed = false;  // of its name, which is not UTF-8: taken for Latin-1
    Coordinates at;
    units::Duration utc_offset{};
    units::Length elevation{};
    std::vector<HourOfWeather> hours;
    std::vector<bool> snowfall = {};  // of each day; empty: nothing in the file tells of snow
};

// From the text of a file; the format is seen from its first line. Kinds of light that are missing
// are worked out where they can be.
//   file   its name, for errors
//   fails  with every bad cell up to the first 20, each with its line (1 is the first) and its
//          column and heading in `found`; with the number of hours when it is not a year's;
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

// Mean of the file's hours with a temperature on that date; absent when there is none.
[[nodiscard]] std::optional<units::Temperature> mean_temperature_on(const WeatherYear& year,
                                                                    units::LocalTime midnight);

}  // namespace solar
