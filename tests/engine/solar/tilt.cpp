#include "solar/tilt.hpp"

namespace {

using namespace units;
using namespace solar;

constexpr LevelLight clear_noon{.beam = 500.0 * watt_per_square_metre,
                                .diffuse = 100.0 * watt_per_square_metre,
                                .extraterrestrial = 900.0 * watt_per_square_metre,
                                .cos_zenith = 0.65};

TEST(tilt, a_plane_square_to_the_sun_has_no_incidence) {
    const SunPosition sun{.zenith = 50.0 * degree, .azimuth = 200.0 * degree};
    EXPECT_NEAR(cos_incidence(sun, {.tilt = 50.0 * degree, .azimuth = 200.0 * degree}), 1.0, 1e-12);
    EXPECT_LT(cos_incidence(sun, {.tilt = 90.0 * degree, .azimuth = 20.0 * degree}), 0.0);
}

TEST(tilt, both_forms_of_the_incidence_agree) {
    const Plane plane{.tilt = 35.0 * degree, .azimuth = 150.0 * degree};
    const Angle latitude = 40.0 * degree, declination = 10.0 * degree, hour_angle = 30.0 * degree;
    // Zenith and azimuth of that moment by vectors: x north, y east, z up.
    const double phi = latitude / radian, delta = declination / radian, w = hour_angle / radian;
    const double north =
        std::cos(phi) * std::sin(delta) - std::sin(phi) * std::cos(delta) * std::cos(w);
    const double east = -std::cos(delta) * std::sin(w);
    const double up =
        std::sin(phi) * std::sin(delta) + std::cos(phi) * std::cos(delta) * std::cos(w);
    const SunPosition sun{.zenith = std::acos(up) * radian,
                          .azimuth = std::atan2(east, north) * radian};
    EXPECT_NEAR(cos_incidence(sun, plane), cos_incidence(latitude, declination, hour_angle, plane),
                1e-12);
}

TEST(tilt, an_upright_plane_sees_half_the_sky_and_half_the_ground) {
    const PlaneLight light =
        light_on_plane(clear_noon, -0.2, 90.0 * degree, Albedo(0.2), SkyModel::isotropic);
    EXPECT_NEAR(light.direct.value(), 0.0, 1e-12);
    EXPECT_NEAR(light.sky.value(), 50.0, 1e-9);
    EXPECT_NEAR(light.ground.value(), 0.5 * 0.2 * 600.0, 1e-9);
}

TEST(tilt, glass_takes_nothing_square_on_and_everything_beyond_80_degrees) {
    EXPECT_DOUBLE_EQ(through_glass(1.0).value(), 1.0);
    EXPECT_DOUBLE_EQ(through_glass(0.1).value(), 0.0);
    EXPECT_NEAR(through_glass(0.5).value(), 0.95, 1e-12);
    EXPECT_EQ(behind_glass(PlaneLight{.direct = 800.0 * watt_per_square_metre}, 1.0),
              800.0 * watt_per_square_metre);
}

}  // namespace
