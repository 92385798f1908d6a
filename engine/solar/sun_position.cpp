#include "solar/sun_position.hpp"

#include <numbers>

namespace solar {

namespace {

using namespace units;

constexpr double rad = std::numbers::pi / 180.0;  // radians in a degree
constexpr double days_1970_to_2000 = 10957.5;     // to 2000-01-01 12:00 UTC

double days_since_2000(Instant when) {
    return when.since_1970() / day - days_1970_to_2000;
}

double wrapped_half_turn(double degrees) {  // -180 to 180
    return degrees - 360.0 * std::floor((degrees + 180.0) / 360.0);
}

double wrapped_turn(double degrees) {  // 0 to less than 360
    const double wrapped = degrees - 360.0 * std::floor(degrees / 360.0);
    return wrapped < 360.0 ? wrapped : 0.0;
}

struct Equatorial {
    double mean_longitude;   // degrees
    double right_ascension;  // degrees
    double sin_declination;
};

// [Almanac] low-precision coordinates of the sun; method.md (1) to (5)
Equatorial equatorial(double days) {
    const double anomaly = (357.529 + 0.98560028 * days) * rad;
    const double mean_longitude = 280.459 + 0.98564736 * days;
    const double longitude =
        (mean_longitude + 1.915 * std::sin(anomaly) + 0.020 * std::sin(2.0 * anomaly)) * rad;
    const double obliquity = (23.439 - 0.00000036 * days) * rad;
    const double sin_longitude = std::sin(longitude);
    return {.mean_longitude = mean_longitude,
            .right_ascension =
                std::atan2(std::cos(obliquity) * sin_longitude, std::cos(longitude)) / rad,
            .sin_declination = std::sin(obliquity) * sin_longitude};
}

double minutes_ahead(double days) {  // method.md (6)
    const Equatorial sun = equatorial(days);
    return 4.0 * wrapped_half_turn(sun.mean_longitude - sun.right_ascension);
}

constexpr double zenith_of_upper_rim = 90.8333;  // 34' of air and 16' of radius, [USNO]

}  // namespace

SunPosition sun_position(Coordinates place, Instant when) {
    const double days = days_since_2000(when);
    const Equatorial sun = equatorial(days);
    const double sidereal = 280.46062 + 360.98564737 * days;  // [Meeus] ch. 12; method.md (7)
    const double hour_angle =
        wrapped_half_turn(sidereal + place.longitude / degree - sun.right_ascension) * rad;
    const double latitude = place.latitude / radian;
    const double sin_latitude = std::sin(latitude);
    const double cos_latitude = std::cos(latitude);
    const double cos_declination = std::sqrt(1.0 - sun.sin_declination * sun.sin_declination);
    const double cos_zenith = sin_latitude * sun.sin_declination +
                              cos_latitude * cos_declination * std::cos(hour_angle);  // (8)
    const double azimuth =
        180.0 + std::atan2(std::sin(hour_angle) * cos_declination,
                           std::cos(hour_angle) * sin_latitude * cos_declination -
                               sun.sin_declination * cos_latitude) /
                    rad;  // [Meeus] ch. 13; method.md (9), both terms times cos of declination
    return {.zenith = std::acos(std::clamp(cos_zenith, -1.0, 1.0)) * radian,
            .azimuth = wrapped_turn(azimuth) * degree};
}

SunPosition seen_through_air(SunPosition geometric, Pressure pressure, Temperature air) {
    const double elevation = 90.0 - geometric.zenith / degree;
    if (elevation < -0.83) return geometric;
    // [SPA] eq. 42; method.md (10)
    const double lift = (pressure / millibar / 1010.0) *
                        (283.0 / (air.above_absolute_zero() / kelvin)) * 1.02 /
                        (60.0 * std::tan((elevation + 10.3 / (elevation + 5.11)) * rad));
    return {.zenith = std::max(0.0, geometric.zenith / degree - lift) * degree,
            .azimuth = geometric.azimuth};
}

Duration equation_of_time(Instant when) {
    return minutes_ahead(days_since_2000(when)) * minute;
}

Angle declination(Instant when) {
    return std::asin(equatorial(days_since_2000(when)).sin_declination) * radian;
}

LocalTime solar_noon(Angle longitude, LocalTime when, Duration utc_offset) {
    const LocalTime midnight = midnight_before(when);
    const Duration mean_noon = 12.0 * hour + utc_offset - longitude / degree / 15.0 * hour;
    const Duration ahead = equation_of_time(instant(midnight + mean_noon, utc_offset));
    return midnight + (mean_noon - ahead);
}

namespace {

// When the zenith distance passes the rim's between two times at which it lies on both sides.
LocalTime crossing(Coordinates place, LocalTime before, LocalTime after, Duration utc_offset) {
    const auto is_up = [&](LocalTime time) {
        return sun_position(place, instant(time, utc_offset)).zenith < zenith_of_upper_rim * degree;
    };
    const bool up_before = is_up(before);
    while (after - before > 0.1 * second) {
        const LocalTime middle = before + 0.5 * (after - before);
        (is_up(middle) == up_before ? before : after) = middle;
    }
    return before + 0.5 * (after - before);
}

}  // namespace

Daylight rise_and_set(Coordinates place, LocalTime any_time_of_the_day, Duration utc_offset) {
    const LocalTime midnight = midnight_before(any_time_of_the_day);
    constexpr double looks = 96.0;  // every 15 minutes; a shorter polar day or night goes unseen
    const auto is_up = [&](LocalTime time) {
        return sun_position(place, instant(time, utc_offset)).zenith < zenith_of_upper_rim * degree;
    };
    Daylight found;
    bool was_up = is_up(midnight);
    found.kind = was_up ? DayKind::polar_day : DayKind::polar_night;
    LocalTime rose = midnight;
    for (double look = 1.0; look <= looks; look += 1.0) {
        const LocalTime now = midnight + look * (day / looks);
        const bool up = is_up(now);
        if (up == was_up) continue;
        found.kind = DayKind::ordinary;
        const LocalTime passes = crossing(place, now - day / looks, now, utc_offset);
        auto& first = up ? found.rises : found.sets;
        if (!first) first = passes;
        if (up)
            rose = passes;
        else
            found.lasts += passes - rose;
        was_up = up;
    }
    if (was_up) found.lasts += midnight + day - rose;
    return found;
}

}  // namespace solar
