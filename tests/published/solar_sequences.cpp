// Samples of drawn days against the closed forms of their distribution, and the even sky against an
// independent chain.
#include <algorithm>
#include <cmath>

#include "solar/sun_track.hpp"
#include "solar/tilt.hpp"
#include "solar/weather/typical_sky.hpp"
#include "solar/weather/weather.hpp"

namespace {

using namespace units;
using namespace solar;

// The second day of many sequences, in order: its score is that of any day.
std::vector<double> sorted_days(double mean) {
    Site site;
    site.clearness.fill(Clearness(mean));
    const LocalTime first = local_time(std::chrono::year(2026) / 1 / 10, {});
    WeatherModel model;
    model.climate_error = 0.0;
    std::vector<double> days;
    for (std::uint32_t number = 0; number < 200000; ++number)
        days.push_back(
            daily_clearness(site, first, 2, model, {.seed = 11, .number = number})[1].value());
    std::sort(days.begin(), days.end());
    return days;
}

double at(const std::vector<double>& days, double below) {
    return days[std::size_t(below * double(days.size()))];
}

double spread(const std::vector<double>& days) {
    double all = 0.0;
    double squares = 0.0;
    for (const double day : days) {
        all += day;
        squares += day * day;
    }
    const double n = double(days.size());
    return std::sqrt(squares / n - all / n * (all / n));
}

TEST(solar_published, drawn_days_scatter_as_the_closed_form_says) {
    // [Bendt 1981] in closed form with 0.13 for the darkest days, computed independently (bisection
    // in Python) for a mean of 0.50 at sea level: P05 0.1864, P10 0.2372, P50 0.5271, P90 0.7124,
    // sd 0.1729; a sample of 200,000 is good to 0.002 at the ends
    const auto days = sorted_days(0.50);
    EXPECT_NEAR(at(days, 0.05), 0.1864, 0.002);
    EXPECT_NEAR(at(days, 0.10), 0.2372, 0.002);
    EXPECT_NEAR(at(days, 0.50), 0.5271, 0.002);
    EXPECT_NEAR(at(days, 0.90), 0.7124, 0.001);
    EXPECT_NEAR(spread(days), 0.1729, 0.001);
}

TEST(solar_published, drawn_days_about_0_44_scatter_evenly) {
    // gamma is 0 there: uniform on 0.13 to 0.75, so P10 0.192, P90 0.688 and sd 0.62/sqrt(12)
    const auto days = sorted_days(0.44);
    EXPECT_NEAR(at(days, 0.05), 0.161, 0.002);
    EXPECT_NEAR(at(days, 0.10), 0.192, 0.002);
    EXPECT_NEAR(at(days, 0.50), 0.440, 0.002);
    EXPECT_NEAR(at(days, 0.90), 0.688, 0.002);
    EXPECT_NEAR(spread(days), 0.62 / std::sqrt(12.0), 0.001);
}

TEST(solar_published, a_winter_day_on_a_steep_slope_under_an_even_sky) {
    // computed independently (numpy): day 344, 40 N, slope 60 to the south, ground 0.2, even sky:
    // 500 1125 2355 4507 6502 Wh/m2 for K 0.15 0.30 0.45 0.60 0.72, to 2 %
    Site site;
    site.at.latitude = 40.0 * degree;
    site.clearness.fill(Clearness(0.5));
    const LocalTime midnight = local_time(std::chrono::year(2025) / 12 / 10, {});  // day 344
    const Plane plane{.tilt = 60.0 * degree, .azimuth = 180.0 * degree};
    const SunTrack track(site, {}, midnight, 1.0 * day);
    const std::vector<std::pair<double, double>> expected{
        {0.15, 500.0}, {0.30, 1125.0}, {0.45, 2355.0}, {0.60, 4507.0}, {0.72, 6502.0}};
    for (const auto& [clearness, watt_hours] : expected) {
        const auto of_day = track.day_light(0, Clearness(clearness));
        Irradiation fell{};
        for (const TrackStep& step : track.steps()) {
            if (!step.lit) continue;
            const Irradiance global = of_day.global * (step.global_share / second);
            const Irradiance diffuse =
                std::min<Irradiance>(global, of_day.diffuse * (step.diffuse_share / second));
            const auto sun =
                sun_position(site.at, instant(step.start + 0.5 * step.duration, site.utc_offset));
            const auto light = light_on_plane({.beam = global - diffuse,
                                               .diffuse = diffuse,
                                               .extraterrestrial = step.extraterrestrial,
                                               .cos_zenith = step.cos_zenith},
                                              cos_incidence(sun, plane), plane.tilt, Albedo(0.2),
                                              SkyModel::isotropic);
            fell += Irradiation(light.total() * step.duration);
        }
        EXPECT_NEAR(fell / kilowatt_hour_per_square_metre * 1000.0, watt_hours, 0.02 * watt_hours)
            << clearness;
    }
}

}  // namespace
