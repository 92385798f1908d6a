// Months on a tilted plane from months on the flat, against a published table made another way:
// [NASA SSE] for 42.075 N, 1.821 E, 22 years' means in kWh/m2 a day, read in a public repository
// that carries the page. It takes the sky as even and each month as one mean day.
#include <cmath>

#include "solar/weather/typical_sky.hpp"

namespace {

using namespace units;
using namespace solar;

constexpr std::array flat{1.81, 2.77, 3.92, 4.66, 5.44, 6.28, 6.56, 5.67, 4.51, 2.96, 2.00, 1.56};
constexpr std::array at_42{3.20, 4.07, 4.84, 4.78, 4.99, 5.46, 5.83, 5.59, 5.21, 4.10, 3.35, 2.95};

Site site_of_the_table() {
    scenario::Place place{};
    place.latitude = 42.075 * degree;
    place.longitude = 1.821 * degree;
    place.elevation = 609.0 * metre;
    place.irradiation.emplace();
    for (std::size_t month = 0; month < 12; ++month)
        (*place.irradiation)[month] = flat[month] * kilowatt_hour_per_square_metre;
    scenario::Assumptions assumptions;
    scenario::Findings findings;
    return site(place, assumptions, findings).value();
}

double daily_mean(const Site& site, double tilt, int month) {
    const std::array groups{PanelGroup{.model = {},
                                       .aims = {{{}, tilt * degree, 180.0 * degree}},
                                       .out = {},
                                       .shade = {},
                                       .covered_days = {}}};
    const LocalTime first = local_time(std::chrono::year(2026) / month / 1, {});
    constexpr std::array days{31, 28, 31, 30, 31, 30, 31, 31, 30, 31, 30, 31};
    const int count = days[std::size_t(month - 1)];
    const auto light = sum(sun_offered(site, groups, {}, first, double(count) * day, TypicalSky{}));
    return light.on_plane / kilowatt_hour_per_square_metre / count;
}

TEST(solar_published, months_on_a_tilted_plane_from_months_on_the_flat) {
    const Site site = site_of_the_table();
    double ours = 0.0;
    double theirs = 0.0;
    for (int month = 1; month <= 12; ++month) {
        const auto i = std::size_t(month - 1);
        EXPECT_NEAR(daily_mean(site, 0.0, month), flat[i], 0.01);
        const double tilted = daily_mean(site, 42.0, month);
        RecordProperty(fmt::format("month_{}", month), fmt::format("{:.3f}", tilted / at_42[i]));
        // Models of the sky and of the days differ: 5 % in a month.
        EXPECT_NEAR(tilted, at_42[i], 0.05 * at_42[i]) << month;
        ours += tilted;
        theirs += at_42[i];
    }
    EXPECT_NEAR(ours / theirs, 1.0, 0.02);
}

}  // namespace
