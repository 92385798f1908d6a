// What holds of the recharge of an outage for every place, day, sky and panel.
#include "solar/recharge.hpp"

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
    for (Clearness& month : site.clearness)
        month = Clearness(between(0.05, 0.75));
    return site;
}

PanelGroup any_group() {
    return {.model = {},
            .count = *rc::gen::inRange(1, 9),
            .aims = {{.at = {},
                      .tilt = between(0.0, 90.0) * degree,
                      .azimuth = between(0.0, 360.0) * degree}},
            .out = {},
            .shade = {},
            .covered_days = {}};
}

LocalTime any_time() {
    return LocalTime(double(*rc::gen::inRange(18262, 25567)) * day + between(0.0, 24.0) * hour);
}

WeatherModel any_weather(LocalTime starts) {
    return {
        .first_sky = *rc::gen::element(FirstSky::unknown, FirstSky::after_storm, FirstSky::clear),
        .first_days = first_days_of(starts),
        .persistence = between(0.0, 0.6)};
}

bool is_in_order(const DayRange& range) {
    return std::isfinite(range.low.value()) && std::isfinite(range.high.value()) &&
           std::isfinite(range.mean.value()) && range.low >= Energy{} &&
           range.low <= range.likely && range.likely <= range.high &&
           range.mean <= 4.0 * range.high;
}

TEST(solar_properties, low_likely_and_high_come_in_order_for_every_day_and_the_whole) {
    EXPECT_TRUE(rc::check([] {
        const Site site = any_site();
        const std::array groups{any_group()};
        const LocalTime starts = any_time();
        const SunTrack track(site, groups, starts, between(0.1, 6.0) * day);
        const Recharge range = recharge(track, site, {}, any_weather(starts), 5, 40);
        RC_ASSERT(is_in_order(range.whole));
        Energy means{};
        for (const auto& of_day : range.days) {
            RC_ASSERT(is_in_order(of_day.offered));
            means += of_day.offered.mean;
        }
        RC_ASSERT(abs(means - range.whole.mean) <= 1e-9 * (means + 1.0 * joule));
        RC_ASSERT(range.days.size() == track.days().size());
    }));
}

TEST(solar_properties, one_more_panel_never_takes_from_any_percentile) {
    EXPECT_TRUE(rc::check([] {
        const Site site = any_site();
        std::array groups{any_group()};
        const LocalTime starts = any_time();
        ControllerModel controller;
        controller.input_limit = between(50.0, 600.0) * watt;
        const WeatherModel model = any_weather(starts);
        const auto with = [&] {
            const SunTrack track(site, groups, starts, 3.0 * day);
            return recharge(track, site, controller, model, 5, 40).whole;
        };
        const DayRange fewer = with();
        ++groups[0].count;
        const DayRange more = with();
        RC_ASSERT(more.low >= fewer.low);
        RC_ASSERT(more.likely >= fewer.likely);
        RC_ASSERT(more.high >= fewer.high);
    }));
}

}  // namespace
