#include "solar/placement.hpp"

#include "solar/weather/typical_sky.hpp"

namespace {

using namespace units;
using namespace solar;

const LocalTime december = local_time(std::chrono::year(2025) / 12 / 10, {});

Site at_latitude(double degrees, double clearness) {
    Site site;
    site.at.latitude = degrees * degree;
    site.clearness.fill(Clearness(clearness));
    return site;
}

PanelGroup group_with(std::vector<scenario::Aim> aims) {
    return {.model = {}, .aims = std::move(aims), .out = {}, .shade = {}, .covered_days = {}};
}

// Plane irradiation of one day under one sky, Wh/m2.
double gives(const Site& site, const PanelGroup& group, LocalTime midnight, double clearness) {
    const std::array groups{group};
    return sum(sun_offered(site, groups, {}, midnight, day, GivenSky{{Clearness(clearness)}}))
               .on_plane /
           kilowatt_hour_per_square_metre * 1000.0;
}

Energy offered(const PanelGroup& group, Duration lasts = day) {
    const std::array groups{group};
    return sum(sun_offered(at_latitude(40.0, 0.5), groups, {}, december, lasts,
                           GivenSky{{Clearness(0.6)}}))
        .offered;
}

TEST(placement, a_clear_winter_day_pays_for_tilting_and_for_aiming) {
    // Computed independently, 40 N, day 344, K 0.65, Wh/m2: flat 2477, best fixed (70) 5961, two
    // aims 6631, three aims 6787; to 2 %
    const Site site = at_latitude(40.0, 0.65);
    EXPECT_NEAR(gives(site, group_with({{{}, {}, 180.0 * degree}}), december, 0.65), 2477.0, 50.0);
    EXPECT_NEAR(gives(site, group_with({{{}, 70.0 * degree, 180.0 * degree}}), december, 0.65),
                5961.0, 120.0);
    EXPECT_NEAR(gives(site, group_with(aims_at_the_sun(site, december, 2)), december, 0.65), 6631.0,
                135.0);
    EXPECT_NEAR(gives(site, group_with(aims_at_the_sun(site, december, 3)), december, 0.65), 6787.0,
                140.0);
}

TEST(placement, on_a_dull_day_aiming_at_the_hidden_sun_gains_nothing_over_flat) {
    // Computed independently, K 0.30: flat 1146, three aims 1133
    const Site site = at_latitude(40.0, 0.30);
    const double flat = gives(site, group_with({{{}, {}, 180.0 * degree}}), december, 0.30);
    const double aimed =
        gives(site, group_with(aims_at_the_sun(site, december, 3)), december, 0.30);
    EXPECT_NEAR(flat, 1146.0, 23.0);
    EXPECT_NEAR(aimed, 1133.0, 23.0);
}

TEST(placement, an_aim_holds_from_its_time_until_the_next_and_over_night) {
    const PanelGroup group = group_with({{9.0 * hour, 50.0 * degree, 120.0 * degree},
                                         {15.0 * hour, 40.0 * degree, 240.0 * degree}});
    EXPECT_NEAR(plane_at(group, 8.0 * hour).azimuth / degree, 240.0, 1e-9);
    EXPECT_NEAR(plane_at(group, 9.0 * hour).azimuth / degree, 120.0, 1e-9);
    EXPECT_NEAR(plane_at(group, 16.0 * hour).azimuth / degree, 240.0, 1e-9);
}

TEST(placement, panels_taken_in_give_nothing_and_halves_of_the_day_add_up) {
    PanelGroup whole = group_with({{{}, 60.0 * degree, 180.0 * degree}});
    PanelGroup morning = whole, rest = whole;
    morning.out = {{.from = 6.0 * hour, .until = 11.3 * hour}};
    rest.out = {{.from = 11.3 * hour, .until = 6.0 * hour}};
    EXPECT_LT(offered(morning), offered(whole));
    EXPECT_NEAR((offered(morning) + offered(rest)) / offered(whole), 1.0, 0.002);
}

TEST(placement, shade_takes_twice_its_share_of_the_direct_light_and_never_the_sky) {
    PanelGroup shaded = group_with({{{}, 60.0 * degree, 180.0 * degree}});
    shaded.shade = {{.hours = {{}, 24.0 * hour}, .shaded = Share(0.25)}};
    EXPECT_DOUBLE_EQ(unshaded(shaded, 12.0 * hour).value(), 0.5);
    const PanelGroup open = group_with({{{}, 60.0 * degree, 180.0 * degree}});
    const Energy quarter = offered(shaded);
    shaded.shade[0].shaded = Share(1.0);
    EXPECT_LT(quarter, offered(open));
    EXPECT_GT(offered(shaded), Energy{});
    EXPECT_LT(offered(shaded), quarter);
}

TEST(placement, a_covered_day_gives_nothing_and_the_next_one_does) {
    PanelGroup group = group_with({{{}, 60.0 * degree, 180.0 * degree}});
    group.covered_days = {1};
    EXPECT_EQ(offered(group), Energy{});
    EXPECT_GT(offered(group, 2.0 * day), Energy{});
}

TEST(placement, the_best_fixed_tilt_is_steep_in_winter_and_flat_in_summer) {
    const Site site = at_latitude(40.0, 0.6);
    const LocalTime june = local_time(std::chrono::year(2026) / 6 / 21, {});
    EXPECT_GE(best_fixed_plane(site, december).tilt / degree, 55.0);
    EXPECT_LE(best_fixed_plane(site, june).tilt / degree, 15.0);
    EXPECT_NEAR(best_fixed_plane(at_latitude(-40.0, 0.6), june).azimuth / degree, 0.0, 1e-9);
}

TEST(placement, a_scenario_that_is_silent_on_tilt_and_aims_gets_them_with_an_assumption) {
    scenario::Assumptions assumptions;
    scenario::Panel panel;
    panel.power = 100.0 * watt;
    panel.placement = scenario::Placement::fixed;
    const Site site = at_latitude(-37.0, 0.5);
    const PanelGroup fixed = panel_group(panel, "panel[0]", site, december, assumptions);
    EXPECT_NEAR(fixed.aims[0].tilt / degree, 37.0, 1e-9);
    EXPECT_NEAR(fixed.aims[0].azimuth / degree, 0.0, 1e-9);
    const auto said = [&](const std::string& where) {
        return std::any_of(assumptions.begin(), assumptions.end(),
                           [&](const auto& a) { return a.where == where; });
    };
    EXPECT_TRUE(said("panel[0].tilt"));
    EXPECT_TRUE(said("panel[0].azimuth"));
    panel.placement = scenario::Placement::aimed;
    EXPECT_EQ(panel_group(panel, "panel[0]", site, december, assumptions).aims.size(), 3u);
    EXPECT_TRUE(said("panel[0].aims"));
}

}  // namespace
