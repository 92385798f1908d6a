// What holds of the sun's chain for every place, day, sky and panel.
#include "solar/sun_track.hpp"
#include "solar/weather/typical_sky.hpp"
#include "solar/weather/weather.hpp"

namespace {

using namespace units;
using namespace solar;

double between(double low, double high) {
    return low + (high - low) * *rc::gen::inRange(0, 1000001) / 1e6;
}

Site any_site() {
    Site site;
    site.at = {.latitude = between(-90.0, 90.0) * degree,
               .longitude = between(-180.0, 180.0) * degree};
    site.utc_offset = std::round(site.at.longitude / degree / 15.0) * hour;
    site.elevation = between(-400.0, 5000.0) * metre;
    site.ground = Albedo(between(0.0, 0.9));
    for (Clearness& month : site.clearness)
        month = Clearness(between(0.05, 0.75));
    return site;
}

PanelGroup any_group() {
    PanelGroup group{.model = {},
                     .count = *rc::gen::inRange(1, 12),
                     .aims = {},
                     .out = {},
                     .shade = {},
                     .covered_days = {}};
    for (int aims = *rc::gen::inRange(1, 4); aims > 0; --aims)
        group.aims.push_back(
            {between(0.0, 23.9) * hour, between(0.0, 90.0) * degree, between(0.0, 360.0) * degree});
    std::sort(group.aims.begin(), group.aims.end(),
              [](const auto& a, const auto& b) { return a.at < b.at; });
    return group;
}

ControllerModel any_controller() {
    ControllerModel controller;
    if (*rc::gen::arbitrary<bool>()) {
        controller.kind = scenario::ControllerKind::pwm;
        controller.efficiency = Efficiency(1.0);
    }
    if (*rc::gen::arbitrary<bool>()) controller.input_limit = between(50.0, 900.0) * watt;
    if (*rc::gen::arbitrary<bool>()) controller.output_limit = between(5.0, 60.0) * ampere;
    return controller;
}

LocalTime any_midnight() {
    return LocalTime(double(*rc::gen::inRange(18262, 25567)) * day);  // 2020 to 2039
}

Energy offered(const Site& site, const PanelGroup& group, const ControllerModel& controller,
               LocalTime from, Duration lasts, const Sky& sky) {
    const std::array groups{group};
    return sum(sun_offered(site, groups, controller, from, lasts, sky)).offered;
}

TEST(solar_properties, nothing_leaves_the_numbers_and_no_power_is_negative) {
    EXPECT_TRUE(rc::check([] {
        const Site site = any_site();
        const std::array groups{any_group(), any_group()};
        const LocalTime from = any_midnight() + between(0.0, 23.0) * hour;
        const Duration lasts = between(0.1, 60.0) * hour;
        const Sky sky = *rc::gen::arbitrary<bool>()
                            ? Sky(TypicalSky{})
                            : Sky(GivenSky{{Clearness(between(0.0, 0.85))}});
        LocalTime now = from;
        for (const SunStep& step : sun_offered(site, groups, any_controller(), from, lasts, sky)) {
            RC_ASSERT(std::isfinite(step.on_plane.value()) && step.on_plane.value() >= 0.0);
            RC_ASSERT(step.on_plane.value() < 2000.0);
            RC_ASSERT(std::isfinite(step.offered.value()) && step.offered.value() >= 0.0);
            RC_ASSERT(std::isfinite(step.clipped.value()) && step.clipped.value() >= 0.0);
            RC_ASSERT(std::isfinite(step.current.value()) && step.current.value() >= 0.0);
            RC_ASSERT(std::abs((step.start - now) / second) < 0.01);
            RC_ASSERT(step.duration.value() > 0.0);
            now = step.start + step.duration;
        }
        RC_ASSERT(std::abs((now - from - lasts) / second) < 0.01);
    }));
}

TEST(solar_properties, a_flat_panel_takes_what_level_ground_takes) {
    EXPECT_TRUE(rc::check([] {
        const Site site = any_site();
        PanelGroup flat = any_group();
        flat.aims = {{.at = {}, .tilt = {}, .azimuth = between(0.0, 360.0) * degree}};
        const std::array groups{flat};
        const Clearness clearness(between(0.05, 0.80));
        const SunTrack track(site, groups, any_midnight(), day);
        const double level = track.day_light(0, clearness).global / kilowatt_hour_per_square_metre;
        const double plane =
            track.day_sum(0, clearness, {}).on_plane / kilowatt_hour_per_square_metre;
        RC_ASSERT(std::abs(plane - level) <= 1e-9 + 1e-9 * level);
    }));
}

TEST(solar_properties, more_panels_never_give_less) {
    EXPECT_TRUE(rc::check([] {
        const Site site = any_site();
        const ControllerModel controller = any_controller();
        const LocalTime from = any_midnight();
        const GivenSky sky{{Clearness(between(0.05, 0.80))}};
        PanelGroup group = any_group();
        const Energy fewer = offered(site, group, controller, from, day, sky);
        ++group.count;
        RC_ASSERT(offered(site, group, controller, from, day, sky) >= fewer * (1.0 - 1e-12));
    }));
}

TEST(solar_properties, a_longer_outage_never_collects_less) {
    EXPECT_TRUE(rc::check([] {
        const Site site = any_site();
        const PanelGroup group = any_group();
        const LocalTime from = any_midnight() + between(0.0, 23.0) * hour;
        const Duration lasts = between(1.0, 50.0) * hour;
        const Energy shorter = offered(site, group, {}, from, lasts, TypicalSky{});
        const Energy longer =
            offered(site, group, {}, from, lasts + between(0.0, 20.0) * hour, TypicalSky{});
        // The last quarter hour of the shorter one is cut and lit at its own middle.
        RC_ASSERT(longer >= shorter * (1.0 - 1e-3) - 2.0 * watt_hour);
    }));
}

TEST(solar_properties, with_an_input_limit_offered_and_clipped_are_what_no_limit_offers) {
    EXPECT_TRUE(rc::check([] {
        const Site site = any_site();
        const std::array groups{any_group()};
        ControllerModel controller;
        const LocalTime from = any_midnight();
        const SunSum free = sum(sun_offered(site, groups, controller, from, day, TypicalSky{}));
        controller.input_limit = between(10.0, 600.0) * watt;
        const SunSum held = sum(sun_offered(site, groups, controller, from, day, TypicalSky{}));
        RC_ASSERT(std::abs((held.offered + held.clipped - free.offered) / joule) <=
                  1e-6 + 1e-9 * (free.offered / joule));
    }));
}

TEST(solar_properties, quantiles_rise_between_the_bounds_and_invert_the_distribution) {
    EXPECT_TRUE(rc::check([] {
        const Clearness mean(between(0.05, 0.75));
        const ClearnessDistribution days(mean, between(-400.0, 5000.0) * metre);
        RC_ASSERT(std::abs(days.mean().value() - mean.value()) < 1e-9);
        double last = days.lowest().value();
        for (int i = 0; i <= 50; ++i) {
            const double u = i / 50.0;
            const Clearness clearness = days.quantile(Probability(u));
            RC_ASSERT(std::isfinite(clearness.value()));
            RC_ASSERT(clearness.value() >= last);
            RC_ASSERT(clearness <= days.highest());
            RC_ASSERT(std::abs(days.below(clearness).value() - u) < 1e-7);
            last = clearness.value();
        }
    }));
}

TEST(solar_properties, means_around_the_even_spread_change_smoothly) {
    // The steepness passes 0 where the mean lies half way between the bounds.
    EXPECT_TRUE(rc::check([] {
        const double off = between(-1.0, 1.0) * std::pow(10.0, between(-14.0, -3.0));
        const ClearnessDistribution days(Clearness(0.44 + off), {});
        const double u = between(0.0, 1.0);
        RC_ASSERT(std::abs(days.quantile(Probability(u)).value() - (0.13 + 0.62 * u)) <
                  2.0 * std::abs(off) + 1e-9);
    }));
}

TEST(solar_properties, every_sequence_of_days_stays_within_the_air) {
    EXPECT_TRUE(rc::check([] {
        const Site site = any_site();
        const WeatherModel model{.first_sky = *rc::gen::element(
                                     FirstSky::unknown, FirstSky::after_storm, FirstSky::clear),
                                 .first_days = *rc::gen::inRange(1, 4),
                                 .persistence = between(0.0, 0.6)};
        const SequenceName name{.seed = *rc::gen::arbitrary<std::uint64_t>(),
                                .number = *rc::gen::arbitrary<std::uint32_t>()};
        const auto days = daily_clearness(site, any_midnight(), 40, model, name);
        RC_ASSERT(days.size() == 40u);
        for (const Clearness clearness : days)
            RC_ASSERT(clearness.value() > 0.0 && clearness.value() < 1.0);
    }));
}

TEST(solar_properties, the_sun_is_somewhere_at_every_instant) {
    EXPECT_TRUE(rc::check([] {
        const Coordinates place{between(-90.0, 90.0) * degree, between(-180.0, 180.0) * degree};
        const LocalTime when = any_midnight() + between(0.0, 24.0) * hour;
        const SunPosition sun = sun_position(place, instant(when, Duration{}));
        RC_ASSERT(sun.zenith / degree >= 0.0 && sun.zenith / degree <= 180.0);
        RC_ASSERT(sun.azimuth / degree >= 0.0 && sun.azimuth / degree < 360.0);
        const Daylight found = rise_and_set(place, when, place.longitude / degree / 15.0 * hour);
        RC_ASSERT(found.lasts / hour >= 0.0 && found.lasts / hour <= 24.0 + 1e-6);
        RC_ASSERT((found.kind == DayKind::ordinary) ==
                  (found.rises.has_value() || found.sets.has_value()));
    }));
}

}  // namespace
