// A made year whose light closes: direct and diffuse make the global by the sun's own height.
#pragma once

#include <algorithm>
#include <array>
#include <cmath>
#include <memory>
#include <string>

#include <gtest/gtest.h>

#include "solar/sun_setup.hpp"
#include "solar/weather/typical_sky.hpp"
#include "solar/weather/weather_summary.hpp"
#include "support/weather_text.hpp"

namespace closing_weather {

using namespace units;
using namespace solar;
using test_support::epw_text;
using test_support::MadeHour;
using test_support::tmy3_text;

inline const Coordinates field{40.0 * degree, -90.0 * degree};

inline double height_at(int day, double hour_of_day) {
    const LocalTime when =
        local_time(std::chrono::year(2026) / 1 / 1, double(day) * 24.0 * units::hour) +
        hour_of_day * units::hour;
    return std::max(
        0.0, std::cos(sun_position(field, instant(when, -6.0 * units::hour)).zenith / radian));
}

inline double height_of(int day, int hour) {
    double sum = 0.0;
    for (int part = 0; part < 12; ++part)
        sum += height_at(day, hour - 1 + (part + 0.5) / 12.0) / 12.0;
    return sum;
}

// Light that closes: the sun's beam on every other day, thin cloud on the others. The sky's light
// grows with the sun, so that nothing falls before sunrise.
inline MadeHour closing(int day, int hour) {
    const double height = height_of(day, hour);
    if (height <= 0.0) return {0.0, 0.0, 0.0, 10.0};
    const double direct = (day % 2 == 0 ? 700.0 : 200.0) * (height > 0.05 ? 1.0 : 0.0);
    const double diffuse = 150.0 * std::min(1.0, 2.0 * height);
    return {direct * height + diffuse, direct, diffuse,
            10.0 + 5.0 * std::sin(2.0 * 3.14159265358979 * (hour - 9) / 24.0)};
}

inline const std::string& closing_text() {
    static const std::string text = epw_text(closing);
    return text;
}

inline WeatherYear year_of(const std::string& text) {
    auto year = read_weather(text, "field.epw");
    EXPECT_TRUE(year) << (year ? "" : print(year.error()[0]));
    return year.value_or(WeatherYear{});
}

inline std::array<PanelGroup, 1> panels(double tilt, double azimuth) {
    return {PanelGroup{.model = {},
                       .aims = {{{}, tilt * degree, azimuth * degree}},
                       .out = {},
                       .shade = {},
                       .covered_days = {}}};
}

inline Irradiation on_plane(const WeatherYear& year, const Site& site, double tilt, double azimuth,
                            LocalTime from, Duration lasts) {
    const auto held = std::make_shared<const WeatherYear>(year);
    return sum(sun_offered(site, panels(tilt, azimuth), {}, from, lasts, HourlySky{held})).on_plane;
}

inline std::string without(bool global, bool direct, bool diffuse) {
    return epw_text([=](int day, int hour) {
        MadeHour made = closing(day, hour);
        if (global) made.global = 9999.0;
        if (direct) made.direct = 9999.0;
        if (diffuse) made.diffuse = 9999.0;
        return made;
    });
}

inline const LocalTime first_of_may = local_time(std::chrono::year(2026) / 5 / 1, {});

}  // namespace closing_weather
