// The whole chain from a day's clearness to a slope against an independent computation.
#include "solar/sun_track.hpp"
#include "solar/weather/typical_sky.hpp"

namespace {

using namespace units;
using namespace solar;

TEST(solar_published, a_winter_day_on_a_steep_slope_under_five_skies) {
    // computed independently (numpy): day 344, 40 N, slope 60 to the south, ground 0.2, sky bright
    // around the sun: 506 1180 2648 5070 6941 Wh/m2 for K 0.15 0.30 0.45 0.60 0.72, to 2 %
    Site site;
    site.at.latitude = 40.0 * degree;
    site.clearness.fill(Clearness(0.5));
    const std::array group{PanelGroup{.model = {},
                                      .aims = {{{}, 60.0 * degree, 180.0 * degree}},
                                      .out = {},
                                      .shade = {},
                                      .covered_days = {}}};
    const LocalTime midnight = local_time(std::chrono::year(2025) / 12 / 10, {});  // day 344
    const std::vector<std::pair<double, double>> expected{
        {0.15, 506.0}, {0.30, 1180.0}, {0.45, 2648.0}, {0.60, 5070.0}, {0.72, 6941.0}};
    for (const auto& [clearness, watt_hours] : expected) {
        const SunSum day_sum = sum(sun_offered(site, group, ControllerModel{}, midnight, day,
                                               GivenSky{{Clearness(clearness)}}));
        EXPECT_NEAR(day_sum.on_plane / kilowatt_hour_per_square_metre * 1000.0, watt_hours,
                    0.02 * watt_hours);
    }
}

}  // namespace
