#include "solar/weather/weather_hour.hpp"

#include <algorithm>
#include <chrono>
#include <cmath>

#include "solar/irradiation.hpp"

namespace solar {

using namespace units;

namespace {

// Any common year; a 29 February falls on 1 March, which the sun does not notice.
Instant instant_of(const WeatherYear& year, const HourOfWeather& row, double hours_before_end) {
    const auto date = std::chrono::year(2026) / row.month / row.date;
    const std::chrono::sys_days days = date;
    return instant(
        local_time(std::chrono::year_month_day(days), (row.hour - hours_before_end) * hour),
        year.utc_offset);
}

}  // namespace

double cos_zenith_at(const WeatherYear& year, const HourOfWeather& row, double hours_before_end) {
    const SunPosition sun = sun_position(year.at, instant_of(year, row, hours_before_end));
    return std::max(0.0, std::cos(sun.zenith / radian));
}

double height_of_hour(const WeatherYear& year, const HourOfWeather& row) {
    constexpr int parts = 6;
    double sum = 0.0;
    for (int part = 0; part < parts; ++part)
        sum += cos_zenith_at(year, row, (part + 0.5) / parts);
    return sum / parts;
}

Irradiance outside_the_air(const HourOfWeather& row) {
    const auto date = std::chrono::year(2026) / row.month / row.date;
    return extraterrestrial_normal(day_of_year(std::chrono::sys_days(date)));
}

void complete_light(const WeatherYear& year, HourOfWeather& row) {
    if (row.global && row.direct && row.diffuse) return;
    const double height = height_of_hour(year, row);
    if (height <= 0.0) {  // night: what is missing is nothing
        for (auto* light : {&row.global, &row.direct, &row.diffuse})
            *light = light->value_or(Irradiance{});
        return;
    }
    const Irradiance outside = outside_the_air(row);
    // A low sun would make a small difference into a large beam.
    const auto square_on = [&](Irradiance level) {
        const Irradiance most = outside * 0.85;  // no beam at the ground is stronger: ours
        return height > 0.02 ? std::clamp<Irradiance>(level / height, {}, most) : Irradiance{};
    };
    row.light = LightFrom::worked_out;
    if (row.direct && row.diffuse) {
        row.global = *row.direct * height + *row.diffuse;
    } else if (row.global && row.direct) {
        row.diffuse = std::max<Irradiance>(Irradiance{}, *row.global - *row.direct * height);
    } else if (row.global && row.diffuse) {
        row.direct = square_on(*row.global - *row.diffuse);
    } else if (row.global) {
        const double clearness = std::min(1.0, double(*row.global / (outside * height)));
        row.diffuse = *row.global * diffuse_share_of_hour(Clearness(clearness)).value();
        row.direct = square_on(*row.global - *row.diffuse);
    } else {  // one of the two alone says nothing of the other
        row.global.reset();
        row.direct.reset();
        row.diffuse.reset();
        row.light = LightFrom::nowhere;
    }
}

}  // namespace solar
