// Irradiation outside the air, through it and onto a slope against worked examples.
#include <numbers>

#include "solar/irradiation.hpp"
#include "solar/places/site.hpp"
#include "solar/tilt.hpp"

namespace {

using namespace units;
using namespace solar;

constexpr Irradiation megajoule = 1e6 * joule / square_metre;

TEST(solar_published, irradiation_outside_the_air_of_textbook_examples) {
    // [Duffie Beckman] example 1.10.1: 43 N, 15 April (day 105): 33.8 MJ/m2
    const Angle declination = declination_of_day(105);
    EXPECT_NEAR(extraterrestrial_day(43.0 * degree, declination, 105) / megajoule, 33.8, 0.1);
    // example 1.10.2: the hour 10 to 11: 3.79 MJ/m2
    EXPECT_NEAR(
        extraterrestrial_between(43.0 * degree, declination, 105, -30.0 * degree, -15.0 * degree) /
            megajoule,
        3.79, 0.02);
}

TEST(solar_published, day_length_and_irradiation_of_a_southern_example) {
    // [FAO-56] examples 8 and 9: 3 September (day 246), 20 S: Ra 32.2 MJ/m2/d, N 11.7 h
    const Angle declination = declination_of_day(246);
    EXPECT_NEAR(extraterrestrial_day(-20.0 * degree, declination, 246) / megajoule, 32.2, 0.1);
    EXPECT_NEAR(sunset_hour_angle(-20.0 * degree, declination) / degree / 7.5, 11.7, 0.1);
}

TEST(solar_published, mean_days_of_all_months_by_an_independent_computation) {
    constexpr std::array equator{36.2, 37.5, 37.9, 36.8, 34.8, 33.5,
                                 33.9, 35.7, 37.2, 37.4, 36.4, 35.7};
    constexpr std::array north60{3.4,  8.5,  16.8, 27.5, 36.6, 41.0,
                                 38.9, 31.0, 20.6, 10.9, 4.5,  2.3};
    for (int month = 1; month <= 12; ++month) {
        const int day = mean_day_of_month(month);
        const Angle declination = declination_of_day(day);
        const auto i = std::size_t(month - 1);
        EXPECT_NEAR(extraterrestrial_day({}, declination, day) / megajoule, equator[i], 0.1);
        EXPECT_NEAR(extraterrestrial_day(60.0 * degree, declination, day) / megajoule, north60[i],
                    0.1);
    }
}

TEST(solar_published, diffuse_shares_by_an_independent_computation) {
    using Row = std::pair<double, double>;
    const std::vector<Row> hourly{{0.1, 0.9910}, {0.22, 0.9802}, {0.35, 0.9043},
                                  {0.5, 0.6591}, {0.65, 0.3336}, {0.8, 0.1653}};
    for (const auto& [clearness, share] : hourly)
        EXPECT_NEAR(diffuse_share_of_hour(Clearness(clearness)).value(), share, 0.0001);
    const std::vector<Row> daily{{0.1, 0.9862}, {0.3, 0.8920}, {0.5, 0.5688}, {0.7, 0.1641}};
    for (const auto& [clearness, share] : daily)
        EXPECT_NEAR(diffuse_share_of_day(Clearness(clearness), 75.0 * degree).value(), share,
                    0.0001);
    EXPECT_DOUBLE_EQ(diffuse_share_of_day(Clearness(0.1), 100.0 * degree).value(), 1.0);
}

TEST(solar_published, an_hour_on_a_steep_slope_over_bright_ground) {
    // [Duffie Beckman] example 2.15.1: 40 N, 20 February (day 51), 9 to 10, I = 1.04 MJ/m2, slope
    // 60 to the south, ground 0.60; printed: Io 2.34, kT 0.445, Id 0.797, Ib 0.243, Rb 1.71,
    // IT 1.17
    constexpr Angle latitude = 40.0 * degree;
    const Angle declination = declination_of_day(51);
    const Irradiation outside =
        extraterrestrial_between(latitude, declination, 51, -45.0 * degree, -30.0 * degree);
    EXPECT_NEAR(outside / megajoule, 2.34, 0.01);
    const double level = 1.04;
    const Clearness clearness(level / (outside / megajoule));
    EXPECT_NEAR(clearness.value(), 0.445, 0.001);
    const double diffuse = level * diffuse_share_of_hour(clearness).value();
    EXPECT_NEAR(diffuse, 0.797, 0.003);
    const Plane slope{.tilt = 60.0 * degree};
    const Angle middle = -37.5 * degree;
    const double zenith = cos_incidence(latitude, declination, middle, Plane{});
    const double incidence = cos_incidence(latitude, declination, middle, slope);
    EXPECT_NEAR(beam_ratio(incidence, zenith), 1.71, 0.01);
    const auto mean = [](double megajoules) {
        return megajoules * 1e6 / 3600.0 * watt_per_square_metre;
    };
    const LevelLight light{.beam = mean(level - diffuse),
                           .diffuse = mean(diffuse),
                           .extraterrestrial = outside / hour,
                           .cos_zenith = zenith};
    const PlaneLight tilted =
        light_on_plane(light, incidence, slope.tilt, Albedo(0.60), SkyModel::isotropic);
    EXPECT_NEAR(tilted.total() * hour / megajoule, 1.17, 0.005);
}

TEST(solar_published, the_share_of_an_hour_at_noon_of_an_equinox) {
    // computed independently: r_t(0, 90) 0.14168, r_d 0.13090 an hour
    EXPECT_NEAR(global_rate({}, 90.0 * degree) / per_hour, 0.14168, 0.00001);
    EXPECT_NEAR(diffuse_rate({}, 90.0 * degree) / per_hour, 0.13090, 0.00001);
}

TEST(solar_published, panels_flat_or_steep_in_december) {
    // The worked question of the users' notes, computed by hand in closed form: 43.7 N, declination
    // -23.45, four panels of 100 W, 1.5 kWh/m2 a day on the flat, 45 % of it diffuse, ground 0.2,
    // all-in 0.75. Printed: Rb 3.21; slope 60 to the south gives 3.23 kWh/m2; flat 450 Wh, tilted
    // 970 Wh. The beam here is spread over the day as the sun outside the air is.
    constexpr Angle latitude = 43.7 * degree;
    constexpr Angle declination = -23.45 * degree;
    constexpr int day_number = 355;
    const Angle sunset = sunset_hour_angle(latitude, declination);
    EXPECT_NEAR(sunset / degree, 65.51, 0.01);
    const Irradiation whole = extraterrestrial_day(latitude, declination, day_number);
    constexpr Plane slope{.tilt = 60.0 * degree};
    constexpr int parts = 400;
    const Angle width = 2.0 / parts * sunset;
    const Duration lasts = width / degree / 15.0 * hour;
    Irradiation tilted{};
    Irradiation flat{};
    for (int part = 0; part < parts; ++part) {
        const Angle from = -sunset + double(part) * width;
        const Irradiation outside =
            extraterrestrial_between(latitude, declination, day_number, from, from + width);
        const double share = outside / whole;
        const auto spread = [&](double kilowatt_hours) {
            return Irradiance(share * kilowatt_hours * kilowatt_hour_per_square_metre / lasts);
        };
        const Angle middle = from + 0.5 * width;
        const LevelLight light{.beam = spread(1.5 * 0.55),
                               .diffuse = spread(1.5 * 0.45),
                               .extraterrestrial = outside / lasts,
                               .cos_zenith = cos_incidence(latitude, declination, middle, Plane{})};
        const auto on = [&](Plane plane) {
            return Irradiation(light_on_plane(light,
                                              cos_incidence(latitude, declination, middle, plane),
                                              plane.tilt, Albedo(0.2), SkyModel::isotropic)
                                   .total() *
                               lasts);
        };
        tilted += on(slope);
        flat += on(Plane{});
    }
    const auto yield = [](Irradiation day) {
        return 400.0 * 0.75 * (day / kilowatt_hour_per_square_metre);
    };
    EXPECT_NEAR(yield(flat), 450.0, 0.5);
    // The closed form has no clamp of the low sun's ratio. Under 5 degrees of elevation ours takes
    // less: 3.3 % of this day, on the cautious side.
    EXPECT_NEAR(tilted / kilowatt_hour_per_square_metre, 3.23, 0.035 * 3.23);
    EXPECT_NEAR(yield(tilted), 970.0, 0.035 * 970.0);
    EXPECT_GT(tilted / flat, 1.9);  // the range accepted there
    EXPECT_LT(tilted / flat, 2.4);
}

}  // namespace
