#include "solar/recharge.hpp"

#include "solar/weather/weather_file.hpp"
#include "support/weather_text.hpp"

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

Recharge of_days(double days, const WeatherModel& model = {}, int weathers = 2000) {
    return recharge(SunTrack(middling(), tilted, first, days * day), middling(), {}, model, 1,
                    weathers);
}

TEST(recharge, the_ranked_weathers_offer_what_the_chain_gives_under_them) {
    const SunTrack track(middling(), tilted, first, 4.0 * day);
    const Recharge range = of_days(4.0);
    for (const auto& [number, offered] : {std::pair{range.ranked.low, range.whole.low},
                                          std::pair{range.ranked.likely, range.whole.likely},
                                          std::pair{range.ranked.high, range.whole.high}}) {
        const GivenSky sky{daily_clearness(middling(), first, int(track.days().size()), {},
                                           {.seed = 1, .number = std::uint32_t(number)})};
        EXPECT_NEAR(offered / sum(track.under(sky, {})).offered, 1.0, 0.003);
    }
    EXPECT_LT(range.whole.low, range.whole.likely);
    EXPECT_LT(range.whole.likely, range.whole.high);
}

TEST(recharge, the_mean_of_weathers_is_the_typical_sky) {
    WeatherModel model;
    model.climate_error = 0.0;
    const Energy typical =
        sum(sun_offered(middling(), tilted, {}, first, 6.0 * day, TypicalSky{})).offered;
    EXPECT_NEAR(of_days(6.0, model, 4000).whole.mean / typical, 1.0, 0.02);
}

// A single day of many weathers must scatter as single days of the month do.
TEST(recharge, a_day_of_many_weathers_is_the_day_range_of_its_month) {
    WeatherModel model;
    model.climate_error = 0.0;
    const DayRange alone = day_range(middling(), tilted, {}, first + 1.0 * day);
    const DayRange among = of_days(3.0, model, 8000).days[1].offered;
    EXPECT_NEAR(among.likely / alone.likely, 1.0, 0.04);
    EXPECT_NEAR(among.high / alone.high, 1.0, 0.02);
    EXPECT_NEAR(among.mean / alone.mean, 1.0, 0.02);
    EXPECT_NEAR(among.low / alone.high, alone.low / alone.high, 0.02);
}

TEST(recharge, an_outage_after_a_storm_begins_with_less_sun) {
    const WeatherModel storm{.first_sky = FirstSky::after_storm, .first_days = 2};
    const Recharge after_storm = of_days(3.0, storm);
    const Recharge any = of_days(3.0);
    EXPECT_LT(after_storm.days[1].offered.high, any.days[1].offered.likely);
    EXPECT_LT(after_storm.whole.mean, any.whole.mean);
}

TEST(recharge, a_night_of_arrival_gives_nothing_and_each_day_touched_is_told) {
    const Recharge range = of_days(2.0);
    ASSERT_EQ(range.days.size(), 3u);
    EXPECT_EQ(range.days[0].offered.high, Energy{});
    EXPECT_EQ(range.days[0].midnight, midnight_before(first));
    EXPECT_GT(range.days[2].offered.low, Energy{});  // until the power is back at 18:00
}

TEST(recharge, a_seed_gives_the_same_figures_and_another_seed_others) {
    const SunTrack track(middling(), tilted, first, 4.0 * day);
    const auto whole = [&](std::uint64_t seed) {
        return recharge(track, middling(), {}, {}, seed, 500).whole;
    };
    EXPECT_EQ(whole(3).low, whole(3).low);
    EXPECT_EQ(whole(3).mean, whole(3).mean);
    EXPECT_NE(whole(3).mean, whole(4).mean);
}

// Sixty days of a made-up file: dark in January up to the 20th, bright after it.
std::shared_ptr<const WeatherYear> bright_from_the_21st() {
    const auto year = read_weather(test_support::epw_text([](int day, int hour) {
                                       auto made = test_support::plain_hour(day, hour);
                                       if (day < 20) made.global = made.direct = made.diffuse = 0.0;
                                       return made;
                                   }),
                                   "made.epw");
    return std::make_shared<const WeatherYear>(*year);
}

TEST(recharge, a_file_runs_on_its_own_hours_and_on_those_of_other_start_dates) {
    const auto year = bright_from_the_21st();
    const SunTrack track(middling(), tilted, first, 3.0 * day);
    const auto offered = [&](int number) {
        return sum(track.under(from_start_date(year, number), {})).offered;
    };
    EXPECT_EQ(offered(season_reaches), Energy{});      // 14 to 17 January
    EXPECT_EQ(offered(season_reaches + 3), Energy{});  // 17 to 20 January, all dark
    EXPECT_GT(offered(season_reaches + 4), Energy{});  // 21 January is bright until 18:00
    EXPECT_GT(offered(0), Energy{});                   // 15 December of the same file
    EXPECT_EQ(recharge_of_hours(track, {}, year).weathers, start_dates);
    const Recharge range = recharge_of_hours(track, {}, year);
    EXPECT_EQ(range.whole.low, Energy{});
    EXPECT_GT(range.whole.high, Energy{});
}

// What is borrowed of another day is its air: in December a June sky does not bring June's sun.
TEST(recharge, another_start_date_lends_its_sky_and_not_its_season) {
    const auto diffuse_only = read_weather(
        test_support::epw_text([](int, int hour) {
            const double light = hour > 8 && hour <= 16 ? 100 : 0;
            return test_support::MadeHour{.global = light, .direct = 0.0, .diffuse = light};
        }),
        "grey.epw");
    const auto year = std::make_shared<const WeatherYear>(*diffuse_only);
    const LocalTime solstice = local_time(std::chrono::year(2026) / 12 / 21, Duration{});
    const std::array flat{PanelGroup{
        .model = {}, .aims = {{{}, Angle{}, {}}}, .out = {}, .shade = {}, .covered_days = {}}};
    const SunTrack track(middling(), flat, solstice, 1.0 * day);
    const auto fell = [&](int later) {
        return sum(track.under(HourlySky{year, later}, {})).on_plane;
    };
    // Outside the air 42 N gets 12.27 MJ/m2 on 21 December and 14.37 on 20 January: [Duffie
    // Beckman] 1.10.3 with the declination of [Cooper 1969], computed apart from this program.
    EXPECT_NEAR(fell(30) / fell(0), 12.27 / 14.37, 0.01);
}

}  // namespace
