#include "solar/sky_range.hpp"

namespace {

using namespace units;
using namespace solar;

const LocalTime first = local_time(std::chrono::year(2026) / 1 / 14, 18.0 * hour);

Site middling() {
    Site site;
    site.at = {.latitude = 42.0 * degree, .longitude = -88.0 * degree};
    site.utc_offset = -6.0 * hour;
    site.clearness.fill(Clearness(0.45));
    return site;
}

const std::array tilted{PanelGroup{.model = {},
                                   .count = 3,
                                   .aims = {{{}, 60.0 * degree, 180.0 * degree}},
                                   .out = {},
                                   .shade = {},
                                   .covered_days = {}}};

TEST(sky_range, what_a_ranked_sky_offers_is_what_the_chain_gives_under_it) {
    const SkyRange range = sky_range(middling(), tilted, {}, first, 4.0 * day, {});
    for (const RankedSky& ranked : {range.dull, range.likely, range.bright}) {
        const Energy chain =
            sum(sun_offered(middling(), tilted, {}, first, 4.0 * day, ranked.sky)).offered;
        EXPECT_NEAR(ranked.offered / chain, 1.0, 0.002);
    }
    EXPECT_LT(range.dull.offered, range.likely.offered);
    EXPECT_LT(range.likely.offered, range.bright.offered);
}

TEST(sky_range, the_mean_of_sequences_is_the_typical_sky) {
    WeatherModel model;
    model.climate_error = 0.0;
    const SkyRange range = sky_range(middling(), tilted, {}, first, 6.0 * day, model, 1, 4000);
    const Energy typical =
        sum(sun_offered(middling(), tilted, {}, first, 6.0 * day, TypicalSky{})).offered;
    EXPECT_NEAR(range.mean / typical, 1.0, 0.02);
}

TEST(sky_range, an_outage_after_a_storm_begins_with_less_sun) {
    const WeatherModel storm{.first_sky = FirstSky::after_storm, .first_days = 2};
    const SkyRange after_storm = sky_range(middling(), tilted, {}, first, 3.0 * day, storm);
    const SkyRange any = sky_range(middling(), tilted, {}, first, 3.0 * day, {});
    EXPECT_LT(after_storm.likely.offered, any.likely.offered);
    EXPECT_LT(after_storm.mean, any.mean);
}

}  // namespace
