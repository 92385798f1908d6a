#include "solar/tilt.hpp"

#include <numbers>

namespace solar {

namespace {

using namespace units;

constexpr double cos_85_degrees = 0.08715574274765817;
constexpr double cos_80_degrees = 0.17364817766693033;

}  // namespace

double cos_incidence(SunPosition sun, Plane plane) {
    const double zenith = sun.zenith / radian;
    const double tilt = plane.tilt / radian;
    return std::cos(zenith) * std::cos(tilt) +
           std::sin(zenith) * std::sin(tilt) * std::cos((sun.azimuth - plane.azimuth) / radian);
}

double cos_incidence(Angle latitude, Angle declination, Angle hour_angle, Plane plane) {
    // [Duffie Beckman] 1.6.2, whose surface azimuth counts from south, west positive
    const double phi = latitude / radian;
    const double delta = declination / radian;
    const double w = hour_angle / radian;
    const double tilt = plane.tilt / radian;
    const double gamma = plane.azimuth / radian - std::numbers::pi;
    return std::sin(delta) * std::sin(phi) * std::cos(tilt) -
           std::sin(delta) * std::cos(phi) * std::sin(tilt) * std::cos(gamma) +
           std::cos(delta) * std::cos(phi) * std::cos(tilt) * std::cos(w) +
           std::cos(delta) * std::sin(phi) * std::sin(tilt) * std::cos(gamma) * std::cos(w) +
           std::cos(delta) * std::sin(tilt) * std::sin(gamma) * std::sin(w);
}

double beam_ratio(double cos_incidence, double cos_zenith) {
    return std::max(0.0, cos_incidence) / std::max(cos_zenith, cos_85_degrees);
}

PlaneLight light_on_plane(const LevelLight& level, double cos_incidence, Angle tilt, Albedo ground,
                          SkyModel model) {
    // A flat plane takes what level ground takes; the clamp of (25) must not cost it light.
    const double ratio = tilt == Angle{} ? 1.0 : beam_ratio(cos_incidence, level.cos_zenith);
    const double cos_tilt = std::cos(tilt / radian);
    double around_sun = 0.0;  // [Hay Davies 1980] in [Duffie Beckman] 2.16.2 to 4
    if (model == SkyModel::bright_around_the_sun && level.extraterrestrial > Irradiance{})
        around_sun = std::clamp(double(level.beam / level.extraterrestrial), 0.0, 1.0);
    return {.direct = (level.beam + around_sun * level.diffuse) * ratio,
            .sky = level.diffuse * ((1.0 - around_sun) * 0.5 * (1.0 + cos_tilt)),
            .ground = (level.beam + level.diffuse) * (ground.value() * 0.5 * (1.0 - cos_tilt))};
}

Share through_glass(double cos_incidence) {
    if (cos_incidence <= cos_80_degrees) return Share(0.0);
    return Share(1.0 - 0.05 * (1.0 / cos_incidence - 1.0));  // [Souka Safwat 1966]
}

Share through_glass_from_all_sides() {
    return through_glass(0.5);  // as if from 60 degrees, [Duffie Beckman] 5.4.2, 59.7 level
}

Irradiance behind_glass(const PlaneLight& light, double cos_incidence) {
    return light.direct * through_glass(cos_incidence).value() +
           (light.sky + light.ground) * through_glass_from_all_sides().value();
}

}  // namespace solar
