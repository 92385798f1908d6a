// Snow by the day: how often it falls, how long it lies, and what it takes.
#include "solar/snow_days.hpp"

#include "solar/sun_track.hpp"
#include "solar/weather/weather.hpp"

namespace {

using namespace units;
using namespace solar;

// Days with an inch of snow or more at Minneapolis and St. Paul, 1891 to 2011, a month's mean
// [Twin Cities snow]; the warmth is that of the built-in place.
TEST(snow_days, falls_are_as_frequent_as_in_a_long_record) {
    struct Month {
        double warmth, falls, days;
    };
    for (const Month& month :
         {Month{-11.4, 3.3, 31}, Month{-4.8, 2.6, 28.25}, Month{2.0, 2.7, 31}, Month{7.5, 0.8, 30},
          Month{16.5, 0.1, 31}, Month{8.2, 0.2, 31}, Month{0.3, 1.8, 30}, Month{-7.0, 2.9, 31}})
        EXPECT_NEAR(snowy_days(celsius(month.warmth)).value(), month.falls / month.days, 0.025)
            << month.warmth;
    EXPECT_EQ(snowy_days(celsius(11.0)).value(), 0.0);
}

Site chicago() {
    scenario::Assumptions assumptions;
    scenario::Findings findings;
    scenario::Place place{};
    place.name = "Chicago IL";
    return site(place, assumptions, findings).value();
}

PanelGroup tilted(double degrees) {
    return {.model = {},
            .aims = {{.at = {}, .tilt = degrees * degree, .azimuth = 180.0 * degree}},
            .out = {},
            .shade = {},
            .covered_days = {}};
}

const LocalTime fourteenth_of_january = local_time(std::chrono::year(2026) / 1 / 14, {});

PanelGroup under_snow(double degrees) {
    PanelGroup group = tilted(degrees);
    group.snow = snow_of_months(chicago(), group, fourteenth_of_january, 4.0 * day);
    return group;
}

TEST(snow_days, a_fall_lies_as_long_as_the_author_of_the_law_lost) {
    // January of the tables above: 44 % of 31 days at 2 degrees and 7 % at 60 in five falls, so 2.7
    // and 0.43 days each; a month and a place of another depth and light: within a third.
    EXPECT_NEAR(under_snow(2.0).snow[0].lies, 2.7, 0.9);
    EXPECT_NEAR(under_snow(60.0).snow[0].lies, 0.43, 0.14);
    EXPECT_GT(under_snow(30.0).snow[0].lies, under_snow(60.0).snow[0].lies);
    EXPECT_EQ(under_snow(60.0).snow[6].falls.value(), 0.0);
    EXPECT_TRUE(
        snow_of_months(chicago(), tilted(60.0), fourteenth_of_january + 180.0 * day, 4.0 * day)
            .empty());
}

TEST(snow_days, days_covered_have_the_mean_of_their_month) {
    // By hand: falls x lies of all days, the first one as well.
    for (const double falls : {0.02, 0.16})
        for (const double lies : {0.4, 2.7}) {
            PanelGroup group = tilted(60.0);
            group.snow.assign(12, {.falls = Probability(falls), .lies = lies});
            double covered = 0.0, first = 0.0, days = 0.0;
            for (std::uint32_t number = 0; number < 6000; ++number) {
                const auto each = covered_by_snow(group, fourteenth_of_january,
                                                  snow_draws(40, {.seed = 3, .number = number}));
                covered += double(std::count(each.begin(), each.end(), true));
                first += each[0];
                days += 40.0;
            }
            EXPECT_NEAR(covered / days, falls * lies, 0.06 * falls * lies) << lies;
            EXPECT_NEAR(first / 6000.0, falls * lies, 0.25 * falls * lies) << lies;
        }
}

// January of the author's tables (tests of snow): five falls in 31 days take 44 % at 2 degrees and
// 7 % at 60. The means of drawn months are those; single months scatter about them.
TEST(snow_days, drawn_months_lose_what_the_author_of_the_law_has_at_two_tilts) {
    constexpr double falls = 5.0 / 31.0;
    for (const auto& [degrees, lost] : {std::pair{2.0, 0.44}, std::pair{60.0, 0.07}}) {
        PanelGroup group = tilted(degrees);
        group.snow.assign(12, {.falls = Probability(falls), .lies = lost / falls});
        double sum = 0.0, squares = 0.0;
        constexpr int months = 4000;
        for (std::uint32_t number = 0; number < months; ++number) {
            const auto each = covered_by_snow(group, fourteenth_of_january,
                                              snow_draws(31, {.seed = 9, .number = number}));
            const double share = double(std::count(each.begin(), each.end(), true)) / 31.0;
            sum += share;
            squares += share * share;
        }
        const double mean = sum / months;
        const double deviation = std::sqrt(squares / months - mean * mean);
        RecordProperty(fmt::format("tilt_{:.0f}", degrees),
                       fmt::format("{:.4f} sd {:.4f}", mean, deviation));
        EXPECT_NEAR(mean, lost, 0.02 * lost + 3.0 * deviation / std::sqrt(months));
        EXPECT_LT(deviation, 0.5);
        EXPECT_GT(deviation, 0.03);
    }
}

TEST(snow_days, it_takes_the_whole_of_a_covered_day_and_of_no_other) {
    const PanelGroup flat = under_snow(0.0);
    const std::array groups{flat, tilted(60.0)};  // the second one is brushed off
    const SunTrack track(chicago(), groups, fourteenth_of_january, 3.0 * day);
    const std::vector<Clearness> clear(3, Clearness(0.6));
    const auto offered = [&](const GivenSky& sky, int number) {
        Energy all{};
        const auto series = track.under(sky, {});
        for (std::size_t i = 0; i < series.size(); ++i)
            if (track.steps()[i].day == number) all += series[i].offered * series[i].duration;
        return all;
    };
    const GivenSky bare{.days = clear};
    const GivenSky snowed{.days = clear, .snow = {{}, {.falls = 0.001, .goes = 0.001}, {}}};
    const std::array second{tilted(60.0)};
    const SunTrack alone(chicago(), second, fourteenth_of_january, 3.0 * day);
    EXPECT_EQ(offered(snowed, 0), offered(bare, 0));
    EXPECT_NEAR(offered(snowed, 1) / watt_hour,
                alone.day_sum(1, Clearness(0.6), {}).offered / watt_hour, 1e-6);
    EXPECT_EQ(offered(snowed, 2), offered(bare, 2));  // it goes at once where nothing keeps it
}

TEST(snow_days, less_drawn_never_covers_more) {
    const PanelGroup flat = under_snow(0.0);
    for (std::uint32_t number = 0; number < 2000; ++number) {
        auto draws = snow_draws(12, {.seed = 5, .number = number});
        const auto before = covered_by_snow(flat, fourteenth_of_january, draws);
        for (SnowDraw& draw : draws)
            draw = {.falls = std::sqrt(draw.falls), .goes = std::sqrt(draw.goes)};
        const auto after = covered_by_snow(flat, fourteenth_of_january, draws);
        for (std::size_t i = 0; i < after.size(); ++i)
            EXPECT_LE(after[i], before[i]) << number << " day " << i;
    }
}

}  // namespace
