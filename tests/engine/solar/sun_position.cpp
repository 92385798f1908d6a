#include "solar/sun_position.hpp"

namespace {

using namespace units;
using namespace solar;

LocalTime at_midnight(int year, unsigned month, unsigned date) {
    return local_time(std::chrono::year(year) / std::chrono::month(month) / std::chrono::day(date),
                      {});
}

constexpr Coordinates north_cape{.latitude = 71.17 * degree, .longitude = 25.78 * degree};

TEST(sun_position, the_noon_sun_stands_south_in_chicago_and_north_in_sydney) {
    const auto noon_azimuth = [](Coordinates place, Duration offset) {
        const LocalTime noon = solar_noon(place.longitude, at_midnight(2026, 3, 1), offset);
        return sun_position(place, instant(noon, offset)).azimuth / degree;
    };
    EXPECT_NEAR(noon_azimuth({41.98 * degree, -87.92 * degree}, -6.0 * hour), 180.0, 0.1);
    const double north = noon_azimuth({-33.95 * degree, 151.18 * degree}, 10.0 * hour);
    EXPECT_NEAR(std::min(north, 360.0 - north), 0.0, 0.1);
}

TEST(sun_position, the_morning_sun_stands_east_and_the_evening_sun_west) {
    constexpr Coordinates quito{.latitude = {}, .longitude = -78.5 * degree};
    const LocalTime noon = solar_noon(quito.longitude, at_midnight(2026, 3, 20), -5.0 * hour);
    EXPECT_NEAR(sun_position(quito, instant(noon - 5.0 * hour, -5.0 * hour)).azimuth / degree, 90.0,
                1.0);
    EXPECT_NEAR(sun_position(quito, instant(noon + 5.0 * hour, -5.0 * hour)).azimuth / degree,
                270.0, 1.0);
}

TEST(sun_position, it_does_not_set_at_midsummer_nor_rise_at_midwinter_in_the_far_north) {
    const Daylight summer = rise_and_set(north_cape, at_midnight(2026, 6, 21), 1.0 * hour);
    EXPECT_EQ(summer.kind, DayKind::polar_day);
    EXPECT_FALSE(summer.rises || summer.sets);
    EXPECT_DOUBLE_EQ(summer.lasts / hour, 24.0);
    const Daylight winter = rise_and_set(north_cape, at_midnight(2026, 12, 21), 1.0 * hour);
    EXPECT_EQ(winter.kind, DayKind::polar_night);
    EXPECT_FALSE(winter.rises || winter.sets);
    EXPECT_DOUBLE_EQ(winter.lasts / hour, 0.0);
}

TEST(sun_position, the_day_lasts_from_sunrise_to_sunset) {
    const Daylight day =
        rise_and_set({41.98 * degree, -87.92 * degree}, at_midnight(2026, 1, 14), -6.0 * hour);
    ASSERT_TRUE(day.rises && day.sets);
    EXPECT_NEAR(day.lasts / second, (*day.sets - *day.rises) / second, 0.5);
}

TEST(sun_position, air_lifts_the_sun_half_a_degree_at_the_horizon_and_not_below_it) {
    const SunPosition low{.zenith = 90.0 * degree, .azimuth = 100.0 * degree};
    const SunPosition seen = seen_through_air(low, 1010.0 * millibar, celsius(10.0));
    EXPECT_NEAR((low.zenith - seen.zenith) / degree, 0.48, 0.05);  // about 29', [Meeus] ch. 16
    const SunPosition below{.zenith = 91.0 * degree, .azimuth = {}};
    EXPECT_EQ(seen_through_air(below, 1010.0 * millibar, celsius(10.0)).zenith, below.zenith);
}

}  // namespace
