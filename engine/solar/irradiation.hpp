// From a day's clearness to the sun's power at each time of the day, on level ground.
// Angles of the day: hour angle 0 at solar noon, negative before it, 15 degrees an hour.
#pragma once

#include <optional>
#include <vector>

#include "units/quantities.hpp"

namespace solar {

// What reaches level ground over what would without air. 0 to about 0.8 for a day.
using Clearness = units::Fraction<struct ClearnessMeaning>;

inline constexpr units::Irradiance solar_constant = 1367.0 * units::watt_per_square_metre;

[[nodiscard]] units::Irradiance extraterrestrial_normal(int day_of_year);  // method.md (11)

// Of the day as a whole, by the day's number. method.md (12)
[[nodiscard]] units::Angle declination_of_day(int day_of_year);

// Half the day's length: 0 in polar night, 180 degrees in polar day. method.md (13)
[[nodiscard]] units::Angle sunset_hour_angle(units::Angle latitude, units::Angle declination);

// On a level plane outside the air; never negative. method.md (14), (15)
[[nodiscard]] units::Irradiation extraterrestrial_day(units::Angle latitude,
                                                      units::Angle declination, int day_of_year);
[[nodiscard]] units::Irradiation extraterrestrial_between(units::Angle latitude,
                                                          units::Angle declination, int day_of_year,
                                                          units::Angle from, units::Angle to);

// The diffuse part of the global irradiation, 0 to 1: of a whole day, of one hour.
// Use one of the two in a chain, never both. method.md (16), (17)
[[nodiscard]] units::Share diffuse_share_of_day(Clearness clearness, units::Angle sunset);
[[nodiscard]] units::Share diffuse_share_of_hour(Clearness clearness);

// The share of a day's global or diffuse irradiation that falls in an hour centred on the
// hour angle; 0 at night. Not normalised: sums over a day lie within 0.99 to 1.01. (18), (19)
[[nodiscard]] units::Frequency global_rate(units::Angle hour_angle, units::Angle sunset);
[[nodiscard]] units::Frequency diffuse_rate(units::Angle hour_angle, units::Angle sunset);

// Estimates of clearness where no radiation was measured. method.md (20) to (22)
[[nodiscard]] Clearness clear_sky(units::Length elevation);
[[nodiscard]] Clearness clearness_from_sunshine(units::Duration sunshine, units::Duration daylight);
[[nodiscard]] Clearness clearness_from_temperature_range(units::TemperatureDifference daily_range,
                                                         bool on_a_coast);

}  // namespace solar
