#include "solar/weather/weather_hour.hpp"

#include "engine/solar/closing_weather.hpp"

namespace {

using namespace closing_weather;

TEST(weather_hour, a_kind_of_light_that_is_missing_follows_from_the_others) {
    const WeatherSummary whole = summary(year_of(closing_text()));
    EXPECT_EQ(whole.worked_out, 0);
    EXPECT_TRUE(oddities_of(whole).empty());
    for (int missing = 0; missing < 3; ++missing) {
        const WeatherSummary found =
            summary(year_of(without(missing == 0, missing == 1, missing == 2)));
        EXPECT_NEAR(found.global / whole.global, 1.0, 0.002) << missing;
        EXPECT_NEAR(found.direct / whole.direct, 1.0, 0.01) << missing;
        EXPECT_NEAR(found.diffuse / whole.diffuse, 1.0, 0.01) << missing;
        EXPECT_EQ(found.missing, 0);
        EXPECT_GT(found.worked_out, 4000);
        ASSERT_FALSE(oddities_of(found).empty());
        EXPECT_NE(in_english(oddities_of(found)[0].text).find("worked out"), std::string::npos);
    }
}

TEST(weather_hour, letters_that_were_guessed_are_told_as_a_note) {
    WeatherSummary sums = summary(year_of(closing_text()));
    sums.letters_guessed = true;
    ASSERT_EQ(oddities_of(sums).size(), 1U);
    EXPECT_EQ(oddities_of(sums)[0].severity, scenario::Severity::note);
}

TEST(weather_hour, global_light_alone_is_split_by_the_hours_clearness) {
    const auto dull = epw_text([](int day, int hour) {
        const double height = height_of(day, hour);
        return MadeHour{height > 0.0 ? 50.0 * height : 0.0, 9999.0, 9999.0, 10.0};
    });
    const WeatherYear year = year_of(dull);
    // [Erbs 1982]: 1 - 0.09 k below k = 0.22. 21 June: 1326 W/m2 outside the air, so k = 0.0377.
    const HourOfWeather& noon = year.hours[171 * 24 + 11];
    EXPECT_NEAR(*noon.diffuse / *noon.global, 1.0 - 0.09 * 0.0377, 1e-4);
    EXPECT_EQ(noon.light, LightFrom::worked_out);
}

// At noon of an equinox the sun stands as far from the zenith as the place from the equator: 40
// degrees, cosine 0.766. By the clock of 90 degrees west, six hours behind, that is the hour's end
// at 12:00 and some minutes; at midnight it is down.
TEST(weather_hour, the_sun_stands_by_the_files_own_clock) {
    const WeatherYear year{.at = field, .utc_offset = -6.0 * units::hour};
    const HourOfWeather noon{.month = 3, .date = 21, .hour = 12};
    EXPECT_NEAR(cos_zenith_at(year, noon, 0.0), 0.766, 0.01);
    EXPECT_NEAR(height_of_hour(year, noon), 0.76, 0.01);
    EXPECT_EQ(cos_zenith_at(year, {.month = 3, .date = 21, .hour = 24}, 0.5), 0.0);
}

// [Duffie Beckman] 1.4: 1,367 W/m2 within 3.3 %, most on 3 January and least in July.
TEST(weather_hour, the_earth_is_nearest_the_sun_in_january) {
    EXPECT_NEAR(outside_the_air({.month = 1, .date = 3}).value(), 1367.0 * 1.033, 3.0);
    EXPECT_NEAR(outside_the_air({.month = 7, .date = 4}).value(), 1367.0 * 0.967, 3.0);
}

// At night what is missing is nothing.
TEST(weather_hour, a_night_needs_no_light_in_the_file) {
    const WeatherYear year{.at = field, .utc_offset = -6.0 * units::hour};
    HourOfWeather night{.month = 1, .date = 10, .hour = 3};
    complete_light(year, night);
    EXPECT_EQ(night.light, LightFrom::file);
    EXPECT_EQ(*night.global, Irradiance{});
    EXPECT_EQ(*night.direct, Irradiance{});
}

}  // namespace
