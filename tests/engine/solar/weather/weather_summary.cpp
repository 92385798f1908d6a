#include "solar/weather/weather_summary.hpp"

#include "engine/solar/closing_weather.hpp"

namespace {

using namespace closing_weather;
using test_support::plain_hour;

TEST(weather_summary, the_worst_days_are_found) {
    const auto made = [](int day, int hour) {
        MadeHour hour_made = plain_hour(day, hour);
        if (day == 40) hour_made.global *= 0.1;  // 10 February
        if (day >= 300 && day < 303) hour_made.global *= 0.3;
        return hour_made;
    };
    const WeatherSummary sums = summary(read_weather(epw_text(made), "").value());
    EXPECT_EQ(sums.worst_day_month, 2);
    EXPECT_EQ(sums.worst_day_date, 10);
    EXPECT_NEAR(sums.worst_day / kilowatt_hour_per_square_metre, 0.28, 1e-9);
    EXPECT_NEAR(sums.worst_three_days / kilowatt_hour_per_square_metre, 3 * 0.84, 1e-9);
}

TEST(weather_summary, a_site_of_a_file_keeps_its_months) {
    const WeatherYear year = read_weather(epw_text(plain_hour), "").value();
    const Site site = site_of(year);
    for (int month = 1; month <= 12; ++month)
        EXPECT_NEAR(site.clearness[std::size_t(month - 1)].value() *
                        (extraterrestrial_of_month(site.at.latitude, month) /
                         kilowatt_hour_per_square_metre),
                    2.8, 1e-6);
    EXPECT_TRUE(site.temperature);
}

// Before sunrise a station sees some light of the sky. With a kind missing all day those are the
// only hours that hold all three, and the clock is not told from them.
TEST(weather_summary, twilight_alone_says_nothing_of_the_clock) {
    for (int missing = 0; missing < 3; ++missing) {
        const WeatherSummary found = summary(year_of(epw_text([=](int day, int hour) {
            MadeHour made = closing(day, hour);
            const bool twilight = height_of(day, hour) <= 0.0 && height_of(day, hour + 1) > 0.0;
            if (twilight) made.global = made.diffuse = 9.0;
            if (missing == 0) made.global = 9999.0;
            if (missing == 1) made.direct = 9999.0;
            if (missing == 2) made.diffuse = 9999.0;
            return made;
        })));
        EXPECT_EQ(found.sun_late, 0.0 * hour) << missing;
        ASSERT_EQ(oddities_of(found).size(), 1u) << missing;
        EXPECT_NE(in_english(oddities_of(found)[0].text).find("worked out"), std::string::npos);
    }
}

TEST(weather_summary, a_clock_that_is_out_is_told_with_its_hours) {
    for (const int out : {-3, -1, 1, 2, 6}) {
        const WeatherSummary found = summary(year_of(epw_text([=](int day, int hour) {
            const int moved = day * 24 + hour - 1 + out;
            const int within = (moved + 8760) % 8760;
            return closing(within / 24, within % 24 + 1);
        })));
        EXPECT_NEAR(found.sun_late / hour, out, 1e-9);
        ASSERT_FALSE(oddities_of(found).empty());
        EXPECT_EQ(oddities_of(found)[0].severity, scenario::Severity::caution);
    }
}

// Eight hours a day of 350, 500 and 100 W/m2: 365 times 2.8, 4.0 and 0.8 kWh/m2, each month alike.
TEST(weather_summary, sums_are_those_of_the_hours) {
    const WeatherSummary sums = summary(year_of(epw_text(plain_hour)));
    EXPECT_EQ(sums.hours, 8760);
    EXPECT_NEAR(sums.global / kilowatt_hour_per_square_metre, 1022.0, 1e-6);
    EXPECT_NEAR(sums.direct / kilowatt_hour_per_square_metre, 1460.0, 1e-6);
    EXPECT_NEAR(sums.diffuse / kilowatt_hour_per_square_metre, 292.0, 1e-6);
    for (const Irradiation& month : sums.monthly)
        EXPECT_NEAR(month / kilowatt_hour_per_square_metre, 2.8, 1e-9);
}

TEST(weather_summary, hours_without_light_count_as_dark_and_those_without_warmth_as_usual) {
    const WeatherSummary sums{.hours = 8760, .missing = 1, .without_air = 2};
    const auto odd = oddities_of(sums);
    ASSERT_EQ(odd.size(), 2U);
    EXPECT_NE(in_english(odd[0].text).find("1 of 8760 hours has no usable light"),
              std::string::npos);
    EXPECT_EQ(odd[0].severity, scenario::Severity::caution);
    EXPECT_NE(in_english(odd[1].text).find("2 hours have no temperature"), std::string::npos);
}

}  // namespace
