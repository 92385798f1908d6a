#include "outage/sky.hpp"

#include "solar/weather/typical_sky.hpp"

namespace {

using namespace units;
using outage::SkyEnd;
using scenario::DaySky;
using solar::Clearness;

const LocalTime morning = local_time(std::chrono::year(2026) / 6 / 5, 6.0 * hour);

// Every month half way between the darkest and the clearest day, where days scatter evenly.
solar::Site even_site() {
    solar::Site site;
    site.at.latitude = 41.0 * degree;
    site.clearness.fill(Clearness(0.44));
    return site;
}

std::vector<solar::PanelGroup> one_flat_panel(const solar::Site& site) {
    scenario::Panel panel;
    panel.power = 100.0 * watt;
    panel.count = 1;
    scenario::Assumptions assumptions;
    return {solar::panel_group(panel, "panel", site, morning, assumptions)};
}

scenario::Outage three_days(std::vector<DaySky> sky, LocalTime starts = morning) {
    return {.starts = starts, .lasts = 3.0 * day, .cause = std::nullopt, .sky = std::move(sky)};
}

// What is offered from one time of the outage to another.
Energy offered(const std::vector<outage::SunChange>& changes, Duration from, Duration to) {
    Energy all{};
    for (std::size_t i = 0; i < changes.size(); ++i) {
        const Duration until = i + 1 < changes.size() ? changes[i + 1].from : to;
        const Duration begins = std::max(from, changes[i].from), ends = std::min(to, until);
        if (ends > begins) all += changes[i].offered * (ends - begins);
    }
    return all;
}

Energy of_day(const scenario::Outage& outage, SkyEnd end, int number) {
    const auto site = even_site();
    const auto changes = outage::sun_changes(site, one_flat_panel(site), {}, outage, end);
    const Duration midnight = 24.0 * hour - time_of_day(outage.starts);
    const Duration begins = number == 0 ? Duration{} : midnight + double(number - 1) * day;
    return offered(changes, begins, midnight + double(number) * day);
}

// The same day with a clearness worked out by hand.
Energy of_day_at(double clearness, int number) {
    const auto site = even_site();
    const LocalTime from = number == 0 ? morning : midnight_before(morning) + double(number) * day;
    const Duration lasts = midnight_before(morning) + double(number + 1) * day - from;
    return solar::sum(solar::sun_offered(site, one_flat_panel(site), {}, from, lasts,
                                         solar::GivenSky{{Clearness(clearness)}}))
        .offered;
}

double watt_hours(Energy energy) {
    return energy / watt_hour;
}

TEST(sky, the_days_of_a_forecast_are_in_the_middle_of_their_bands) {
    // Days scatter evenly from 0.13 to 0.75, so the middle of the clear band, 0.875, is a clearness
    // of 0.13 + 0.62 x 0.875 = 0.6725. The second day's dark band goes to 0.19, its middle is
    // 0.13 + 0.62 x 0.095 = 0.1889.
    const auto outage = three_days({DaySky::clear, DaySky::dark});
    EXPECT_NEAR(watt_hours(of_day(outage, SkyEnd::likely, 0)), watt_hours(of_day_at(0.6725, 0)),
                0.01);
    EXPECT_NEAR(watt_hours(of_day(outage, SkyEnd::likely, 1)), watt_hours(of_day_at(0.1889, 1)),
                0.01);
    EXPECT_EQ(of_day(outage, SkyEnd::likely, 2), of_day(three_days({}), SkyEnd::likely, 2));
}

TEST(sky, an_evening_takes_the_word_of_the_next_day) {
    const auto evening = midnight_before(morning) + 18.0 * hour;
    const auto outage = three_days({DaySky::dark}, evening);
    EXPECT_LT(of_day(outage, SkyEnd::likely, 0),
              0.5 * of_day(three_days({}, evening), SkyEnd::likely, 0));
    EXPECT_NEAR(watt_hours(of_day(outage, SkyEnd::likely, 1)),
                watt_hours(of_day_at(0.13 + 0.62 * 0.05, 1)), 0.01);
    EXPECT_EQ(of_day(outage, SkyEnd::likely, 2),
              of_day(three_days({}, evening), SkyEnd::likely, 2));
}

TEST(sky, a_forecast_keeps_the_ends_in_their_order) {
    for (const DaySky sky : {DaySky::dark, DaySky::grey, DaySky::mixed, DaySky::clear}) {
        const auto outage = three_days({sky, sky, sky});
        for (int number = 0; number < 3; ++number) {
            const Energy low = of_day(outage, SkyEnd::dull, number);
            const Energy likely = of_day(outage, SkyEnd::likely, number);
            EXPECT_LT(low, likely) << number;
            EXPECT_LT(likely, of_day(outage, SkyEnd::bright, number)) << number;
        }
    }
}

TEST(sky, a_clear_forecast_never_lowers_and_a_dark_one_never_raises) {
    for (const auto end : {SkyEnd::dull, SkyEnd::likely, SkyEnd::bright})
        for (int number = 0; number < 3; ++number) {
            const Energy none = of_day(three_days({}), end, number);
            EXPECT_GE(of_day(three_days(std::vector(3, DaySky::clear)), end, number), none);
            EXPECT_LE(of_day(three_days(std::vector(3, DaySky::dark)), end, number), none);
        }
}

}  // namespace
