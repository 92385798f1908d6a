// The sun of a weather file's hours, as panels see it.
#include "engine/solar/closing_weather.hpp"

namespace {

using namespace closing_weather;

TEST(hourly_sun, another_clock_sees_the_same_sun) {
    const WeatherYear year = year_of(closing_text());
    const Site at_home = site_of(year);
    for (const double ahead : {1.0, -1.0, 0.5}) {
        Site moved = at_home;
        moved.utc_offset = at_home.utc_offset + ahead * hour;
        const double home = on_plane(year, at_home, 90.0, 90.0, first_of_may, 10.0 * day).value();
        const double away =
            on_plane(year, moved, 90.0, 90.0, first_of_may + ahead * hour, 10.0 * day).value();
        EXPECT_NEAR(away / home, 1.0, 0.002) << ahead;
    }
}

// The hours of sunrise and sunset hold 47 W/m2 of sky and a strong beam, whatever part of them is
// lit. Gathered into five minutes that would be 564 W/m2 of sky and a beam of 8400.
TEST(hourly_sun, the_hour_of_sunrise_makes_no_peak) {
    const auto year = year_of(epw_text([](int day, int hour) {
        const double height = height_of(day, hour);
        if (height <= 0.0) return MadeHour{};
        return MadeHour{350.0 * height + 47.0, 350.0, 47.0, 10.0};
    }));
    const auto held = std::make_shared<const WeatherYear>(year);
    const LocalTime january = local_time(std::chrono::year(2026) / 1 / 1, {});
    int low = 0;
    for (const double tilt : {0.0, 60.0, 90.0})
        for (const double azimuth : {90.0, 180.0, 270.0})
            for (const SunStep& step : sun_offered(site_of(year), panels(tilt, azimuth), {},
                                                   january, 365.0 * day, HourlySky{held})) {
                const double hours = (step.start - january) / hour + 0.5 * (step.duration / hour);
                const double of_day = hours - 24.0 * std::floor(hours / 24.0);
                const double height = height_at(int(hours / 24.0), of_day);
                if (height <= 0.0 || height > 0.05) continue;
                ++low;
                // Beams of 350 W/m2 fall on the panel as they stand, bent by the bound at 85
                // degrees; the sky gives no more than reaches the top of the air.
                EXPECT_LT(step.on_plane.value(), (350.0 + 1400.0) * height / 0.087)
                    << hours << " " << tilt;
            }
    EXPECT_GT(low, 1000);
}

TEST(hourly_sun, the_grounds_albedo_is_the_files_unless_typed) {
    std::string snowy = closing_text();
    for (std::size_t at = 0; (at = snowy.find("999.000", at)) != std::string::npos; at += 5)
        snowy.replace(at, 7, "0.600");
    const WeatherYear bare = year_of(closing_text());
    const WeatherYear white = year_of(snowy);
    const Site site = site_of(bare);
    ASSERT_TRUE(mean_ground(white));
    EXPECT_NEAR(mean_ground(white)->value(), 0.6, 1e-12);
    EXPECT_FALSE(mean_ground(bare));
    // An upright plane sees half the ground: 0.5 (0.6 - 0.2) of the level light.
    const double level = on_plane(bare, site, 0.0, 180.0, first_of_may, 5.0 * day).value();
    const double gains = on_plane(white, site, 90.0, 0.0, first_of_may, 5.0 * day).value() -
                         on_plane(bare, site, 90.0, 0.0, first_of_may, 5.0 * day).value();
    EXPECT_NEAR(gains / level, 0.2, 1e-3);
    Site typed = site;
    typed.ground_is_known = true;
    EXPECT_EQ(on_plane(white, typed, 90.0, 0.0, first_of_may, 5.0 * day),
              on_plane(bare, typed, 90.0, 0.0, first_of_may, 5.0 * day));
}

TEST(hourly_sun, flat_panels_collect_what_the_file_says_fell_on_the_ground) {
    // Light made from the sun's own height, so that it closes: 500 direct, 100 diffuse.
    const Coordinates place{40.0 * degree, -90.0 * degree};
    const auto made = [&](int day, int hour) {
        double height = 0.0;
        for (int part = 0; part < 60; ++part) {
            const LocalTime when =
                local_time(std::chrono::year(2026) / 1 / 1, double(day) * 24.0 * units::hour) +
                (hour - 1 + (part + 0.5) / 60.0) * units::hour;
            height +=
                std::max(0.0,
                         std::cos(sun_position(place, instant(when, -6.0 * units::hour)).zenith /
                                  radian)) /
                60.0;
        }
        const double lit = height > 0.02 ? 1.0 : 0.0;
        return MadeHour{lit * (500.0 * height + 100.0), lit * 500.0, lit * 100.0, 10.0};
    };
    const auto year = std::make_shared<const WeatherYear>(read_weather(epw_text(made), "").value());
    const std::array group{PanelGroup{.model = {},
                                      .aims = {{{}, {}, 180.0 * degree}},
                                      .out = {},
                                      .shade = {},
                                      .covered_days = {}}};
    const LocalTime june = local_time(std::chrono::year(2026) / 6 / 1, {});
    const SunSum sums =
        sum(sun_offered(site_of(*year), group, {}, june, 30.0 * day, HourlySky{year}));
    EXPECT_NEAR(sums.on_plane / (30.0 * summary(*year).monthly[5]), 1.0, 0.01);
    EXPECT_GT(sums.offered, Energy{});
}

}  // namespace
