// Where the sun stands, and when it rises and sets.
//   accuracy  0.011 degrees against an independent ephemeris, 2000 to 2050; method.md, section 1
#pragma once

#include <optional>

#include <boost/units/systems/si/pressure.hpp>

#include "units/time.hpp"

namespace solar {

using Pressure = boost::units::quantity<units::si::pressure>;
inline constexpr Pressure millibar = Pressure::from_value(100.0);

struct Coordinates {
    units::Angle latitude;   // north positive, -90 to 90 degrees
    units::Angle longitude;  // east positive, -180 to 180 degrees
};

struct SunPosition {
    units::Angle zenith;   // 0 overhead, 90 degrees on the horizon, more below it
    units::Angle azimuth;  // from north, clockwise, 0 to less than 360 degrees
};

// As seen from the centre of the earth, without air; method.md (1) to (9).
[[nodiscard]] SunPosition sun_position(Coordinates place, units::Instant when);

// Lifted by refraction. Below -0.83 degrees of elevation nothing is added; method.md (10).
[[nodiscard]] SunPosition seen_through_air(SunPosition geometric, Pressure pressure,
                                           units::Temperature air);

// Sundial time minus the mean time of the same meridian; positive when the sundial is ahead.
[[nodiscard]] units::Duration equation_of_time(units::Instant when);

[[nodiscard]] units::Angle declination(units::Instant when);

// Local standard time of the sun's highest point on the local day that holds `when`.
[[nodiscard]] units::LocalTime solar_noon(units::Angle longitude, units::LocalTime when,
                                          units::Duration utc_offset);

enum class DayKind { ordinary, polar_day, polar_night };

// The upper rim on the horizon: zenith 90.8333 degrees. [USNO]
//   rises, sets  the first of the local day; each absent on a day that has none (also on an
//                ordinary day where a far-off clock or a high latitude moves it over midnight)
struct Daylight {
    DayKind kind = DayKind::ordinary;
    std::optional<units::LocalTime> rises;
    std::optional<units::LocalTime> sets;
    units::Duration lasts{};  // sun above the horizon between the two midnights
};

[[nodiscard]] Daylight rise_and_set(Coordinates place, units::LocalTime any_time_of_the_day,
                                    units::Duration utc_offset);

}  // namespace solar
