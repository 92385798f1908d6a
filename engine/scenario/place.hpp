// Where the unit stands, and what is known of the sun there.
#pragma once

#include <array>
#include <optional>
#include <string>

#include "units/quantities.hpp"

namespace scenario {

struct Place {
    std::optional<std::string> name;
    std::optional<units::Angle> latitude;   // north positive
    std::optional<units::Angle> longitude;  // east positive
    std::optional<units::Length> elevation;
    std::optional<units::Duration> utc_offset;  // east positive, standard time
    std::optional<std::array<units::Irradiation, 12>>
        irradiation;                                          // of a mean day of each month, flat
    std::optional<std::array<units::Duration, 12>> sunshine;  // bright sunshine of a mean day
    std::optional<std::array<units::Temperature, 12>> temperature;                  // monthly mean
    std::optional<std::array<units::TemperatureDifference, 12>> temperature_range;  // daily
    std::optional<std::string> weather_file;  // as written; relative to the scenario file
    std::optional<units::Share> ground_reflectance;
};

}  // namespace scenario
