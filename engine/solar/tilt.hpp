// From level ground to a tilted plane.
#pragma once

#include "solar/sun_position.hpp"
#include "units/quantities.hpp"

namespace solar {

// Which way a surface looks.
struct Plane {
    units::Angle tilt{};                           // 0 flat, 90 degrees upright
    units::Angle azimuth = 180.0 * units::degree;  // from north, clockwise: 180 looks south
};

using Albedo = units::Fraction<struct AlbedoMeaning>;  // share of light the ground throws back

// How the light of the sky is spread: evenly, or partly around the sun.
enum class SkyModel { isotropic, bright_around_the_sun };

// The light at one time, all on a level plane except the angles.
struct LevelLight {
    units::Irradiance beam;              // straight from the sun
    units::Irradiance diffuse;           // from the sky
    units::Irradiance extraterrestrial;  // beam without air
    double cos_zenith = 0.0;             // of the sun
};

// Light on a plane by way of arrival; the sky's bright part around the sun counts as direct.
struct PlaneLight {
    units::Irradiance direct{};
    units::Irradiance sky{};
    units::Irradiance ground{};
    [[nodiscard]] units::Irradiance total() const { return direct + sky + ground; }
};

// Of the angle between the sun and the plane's normal; negative when the sun is behind. (23)
[[nodiscard]] double cos_incidence(SunPosition sun, Plane plane);
// The same from the hour angle and declination. (24)
[[nodiscard]] double cos_incidence(units::Angle latitude, units::Angle declination,
                                   units::Angle hour_angle, Plane plane);

// Direct light on the plane over that on level ground; the sun's cosine is held above that of
// 85 degrees, where the ratio would run away (common practice, no source). (25)
[[nodiscard]] double beam_ratio(double cos_incidence, double cos_zenith);

[[nodiscard]] PlaneLight light_on_plane(const LevelLight& level, double cos_incidence,
                                        units::Angle tilt, Albedo ground, SkyModel model);  // (26)

// Share of the light that glass lets through compared with square-on light; 0 beyond 80 degrees
// from square-on. (27)
[[nodiscard]] units::Share through_glass(double cos_incidence);
[[nodiscard]] units::Share through_glass_from_all_sides();

// Absorbed light: what counts for the cells. direct light at the angle given, the rest at 60. (28)
[[nodiscard]] units::Irradiance behind_glass(const PlaneLight& light, double cos_incidence);

}  // namespace solar
