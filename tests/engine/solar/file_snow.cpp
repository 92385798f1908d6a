// Snow in a weather file: on which days it falls, what it covers, and files that say nothing of it.
#include "solar/weather/file_snow.hpp"

#include "solar/recharge.hpp"
#include "solar/snow_days.hpp"
#include "solar/sun_track.hpp"
#include "solar/weather/weather_summary.hpp"
#include "support/weather_text.hpp"

namespace {

using namespace units;
using namespace solar;
using test_support::MadeHour;

// Bright winter days of five degrees below freezing all year, with such a depth of snow.
WeatherYear year_with(const std::function<double(int day, int hour)>& depth) {
    const auto text = test_support::epw_text([&](int day, int hour) {
        const bool bright = hour > 9 && hour <= 15;
        return MadeHour{.global = bright ? 250.0 : 0.0,
                        .direct = bright ? 400.0 : 0.0,
                        .diffuse = bright ? 100.0 : 0.0,
                        .air = -5.0,
                        .snow = depth(day, hour)};
    });
    auto year = read_weather(text, "field.epw");
    EXPECT_TRUE(year) << (year ? "" : print(year.error()[0]));
    return year.value_or(WeatherYear{});
}

std::vector<int> days_of(const WeatherYear& year) {
    std::vector<int> days;
    for (std::size_t day = 0; day < year.snowfall.size(); ++day)
        if (year.snowfall[day]) days.push_back(int(day));
    return days;
}

// 5 cm on the 11th of January, 2 cm more on the 13th, gone by the 16th; 3 cm in one night, from the
// last hours of the 20th; 9 cm that fall over a day and settle to 6 within it.
double by_hand(int day, int hour) {
    if (day == 10) return hour < 6 ? 0.0 : 5.0;
    if (day == 11) return 4.0;
    if (day == 12) return 6.0;
    if (day == 13 || day == 14) return 2.0;
    if (day == 19) return hour < 22 ? 0.0 : 1.0;
    if (day == 20) return 4.0;
    if (day == 25) return hour < 3 ? 1.0 : hour < 12 ? 9.0 : 6.0;
    return 0.0;
}

TEST(file_snow, falls_are_the_days_on_which_an_inch_is_added) {
    EXPECT_EQ(days_of(year_with(by_hand)), (std::vector{10, 20, 25}));
}

// January and February of a file come from different years.
TEST(file_snow, what_lies_when_another_years_month_begins_did_not_fall_that_day) {
    EXPECT_EQ(days_of(year_with([](int day, int) { return day >= 31 && day < 59 ? 30.0 : 0.0; })),
              std::vector<int>{});
    EXPECT_EQ(days_of(year_with([](int day, int hour) {
                  return day >= 31 && day < 59 && (day > 31 || hour > 8) ? 30.0 : 0.0;
              })),
              std::vector{31});
}

// Where depths are nought at five degrees below freezing all year, nobody measured them.
TEST(file_snow, a_depth_of_nought_throughout_says_nothing) {
    EXPECT_TRUE(year_with([](int, int) { return 0.0; }).snowfall.empty());
    EXPECT_TRUE(year_with([](int, int) { return 999.0; }).snowfall.empty());
    auto tmy3 = read_weather(test_support::tmy3_text(test_support::plain_hour), "field.csv");
    ASSERT_TRUE(tmy3);
    EXPECT_TRUE(tmy3->snowfall.empty());
}

TEST(file_snow, a_day_without_a_depth_leaves_the_one_before_to_be_compared) {
    EXPECT_EQ(days_of(year_with([](int day, int) {
                  return day == 40 ? 999.0 : day > 40 && day < 50 ? 12.0 : 0.0;
              })),
              std::vector{41});
}

TEST(file_snow, the_share_of_snowy_days_is_that_of_the_start_dates) {
    // Starts from 16 December to 14 February and two days more: three falls of 63 days.
    const auto year = year_with(by_hand);
    const LocalTime fifteenth = local_time(std::chrono::year(2026) / 1 / 15, 8.0 * hour);
    EXPECT_NEAR(snowy_days(year, fifteenth, 2.0 * day).value(), 3.0 / 63.0, 1e-12);
}

PanelGroup flat_under_snow(double lies) {
    PanelGroup group{.model = {},
                     .aims = {{.at = {}, .tilt = {}, .azimuth = 180.0 * degree}},
                     .out = {},
                     .shade = {},
                     .covered_days = {}};
    group.snow.assign(12, {.falls = Probability(3.0 / 63.0), .lies = lies});
    return group;
}

Energy of_day(const SunTrack& track, const SunSeries& series, int number) {
    Energy all{};
    for (std::size_t i = 0; i < series.size(); ++i)
        if (track.steps()[i].day == number) all += series[i].offered * series[i].duration;
    return all;
}

// The falls are the file's, whatever was drawn of them; how long each lies is drawn.
TEST(file_snow, a_files_own_falls_cover_the_panels_of_the_start_date_that_meets_them) {
    const auto year = std::make_shared<const WeatherYear>(year_with(by_hand));
    const std::array groups{flat_under_snow(2.0)};
    const LocalTime ninth = local_time(std::chrono::year(2026) / 1 / 9, {});
    const SunTrack track(site_of(*year), groups, ninth, 5.0 * day);
    const std::vector<SnowDraw> stays(5, {.falls = 0.0, .goes = 0.001});
    const std::vector<SnowDraw> goes(5, {.falls = 0.0, .goes = 0.999});
    for (const int later : {-1, 0, 1, 2}) {
        const auto long_ = track.under(HourlySky{year, later, stays}, {});
        const auto short_ = track.under(HourlySky{year, later, goes}, {});
        const auto bare = track.under(HourlySky{year, later}, {});
        const int fall = 2 - later;  // the 11th is the third day
        for (int number = 0; number < 5; ++number) {
            const bool lies = number >= fall;
            EXPECT_EQ(of_day(track, long_, number), lies ? Energy{} : of_day(track, bare, number))
                << later << " " << number;
            // With 2 days in the mean it covers the day of the fall and half of the next ones.
            EXPECT_EQ(of_day(track, short_, number),
                      number == fall ? Energy{} : of_day(track, bare, number))
                << later << " " << number;
        }
    }
}

TEST(file_snow, a_file_that_says_nothing_takes_the_draws) {
    const auto year = std::make_shared<const WeatherYear>(year_with([](int, int) { return 0.0; }));
    const std::array groups{flat_under_snow(1.0)};
    const LocalTime ninth = local_time(std::chrono::year(2026) / 1 / 9, {});
    const SunTrack track(site_of(*year), groups, ninth, 3.0 * day);
    const std::vector<SnowDraw> draws{
        {}, {.falls = 0.04, .goes = 0.5}, {.falls = 0.06, .goes = 0.5}};
    const auto snowed = track.under(HourlySky{year, 0, draws}, {});
    const auto bare = track.under(HourlySky{year}, {});
    EXPECT_EQ(of_day(track, snowed, 0), of_day(track, bare, 0));
    EXPECT_EQ(of_day(track, snowed, 1), Energy{});
    EXPECT_EQ(of_day(track, snowed, 2), of_day(track, bare, 2));  // 0.06 is above 3 in 63
}

// Two falls of 61 days and 0.5 days each: over many seeds the start dates lose that share.
TEST(file_snow, the_mean_loss_over_start_dates_is_falls_times_days) {
    const auto year = std::make_shared<const WeatherYear>(year_with(
        [](int day, int hour) { return (day == 10 || day == 25) && hour > 3 ? 8.0 : 0.0; }));
    PanelGroup group = flat_under_snow(0.5);
    group.snow.assign(12, {.falls = Probability(2.0 / 61.0), .lies = 0.5});
    const std::array groups{group};
    const LocalTime fifteenth = local_time(std::chrono::year(2026) / 1 / 15, {});
    const SunTrack track(site_of(*year), groups, fifteenth, 1.0 * day);
    const double bare = recharge_of_hours(track, {}, year).whole.mean / joule;
    double with_snow = 0.0;
    constexpr int seeds = 400;
    for (std::uint64_t seed = 1; seed <= seeds; ++seed)
        with_snow += recharge_of_hours(track, {}, year, seed).whole.mean / joule / seeds;
    EXPECT_NEAR(1.0 - with_snow / bare, 2.0 / 61.0 * 0.5, 0.0018);  // three standard errors
}

}  // namespace
