// The hourly CSV of the National Solar Radiation Database, by its published layout: [NSRDB].
#include "solar/weather/data_base_year.hpp"

#include "solar/weather/weather_summary.hpp"
#include "support/weather_text.hpp"

namespace {

using namespace units;
using namespace solar;
using test_support::epw_text;
using test_support::MadeHour;
using test_support::nsrdb_text;
using test_support::plain_hour;

std::string with(std::string text, const std::string& from, const std::string& to) {
    const std::size_t at = text.find(from);
    EXPECT_NE(at, std::string::npos) << from;
    return text.replace(at, from.size(), to);
}

std::string refusal(const std::string& text) {
    const auto year = read_weather(text, "year.csv");
    EXPECT_FALSE(year);
    return year ? "" : print(year.error().front());
}

bool holds(const std::string& text, const char* part) {
    return text.find(part) != std::string::npos;
}

TEST(data_base_year, a_year_gives_the_sums_of_the_same_year_in_another_form) {
    for (const char* line_end : {"\n", "\r\n"}) {
        const auto year = read_weather(nsrdb_text(plain_hour, line_end), "year.csv");
        ASSERT_TRUE(year) << print(year.error().front());
        EXPECT_EQ(year->format, WeatherFormat::nsrdb);
        EXPECT_EQ(year->station, "NSRDB 999999");
        EXPECT_DOUBLE_EQ(year->utc_offset / hour, -6.0);
        EXPECT_DOUBLE_EQ(year->elevation / metre, 200.0);
        EXPECT_NEAR(year->at.longitude / degree, -90.0, 1e-12);
        const WeatherSummary sums = summary(*year);
        // Eight hours a day of 350, 500 and 100 W/m2: 2.8, 4.0 and 0.8 kWh/m2, 365 times.
        EXPECT_NEAR(sums.global / kilowatt_hour_per_square_metre, 1022.0, 1e-6);
        EXPECT_NEAR(sums.direct / kilowatt_hour_per_square_metre, 1460.0, 1e-6);
        EXPECT_NEAR(sums.diffuse / kilowatt_hour_per_square_metre, 292.0, 1e-6);
        EXPECT_NEAR(in_celsius(*sums.mean), 7.5, 0.05);
        EXPECT_NEAR(year->hours[0].ground->value(), 0.16, 1e-12);
    }
}

// The hour from 8:00 to 9:00 is hour 9 in files that name hours by their end; here its row says
// Hour 8, with Minute 30 in the middle or 0 at the beginning.
TEST(data_base_year, an_hour_stamped_in_its_middle_or_at_its_beginning_is_the_same_hour) {
    const auto epw = read_weather(epw_text(plain_hour), "").value();
    for (const int minute : {30, 0}) {
        const auto year = read_weather(nsrdb_text(plain_hour, "\n", minute), "").value();
        ASSERT_EQ(year.hours.size(), 8760u);
        EXPECT_EQ(year.hours.front().hour, 1);
        EXPECT_EQ(year.hours.back().hour, 24);
        for (std::size_t i = 0; i < 48; ++i)
            EXPECT_EQ(year.hours[i].global, epw.hours[i].global) << i;
        EXPECT_EQ(year.hours[8].hour, 9);
        EXPECT_GT(*year.hours[8].global, Irradiance{});
        EXPECT_EQ(*year.hours[7].global, Irradiance{});
    }
}

TEST(data_base_year, a_leap_year_may_hold_its_29_february_or_not) {
    const auto leap = read_weather(nsrdb_text(plain_hour, "\n", 30, true), "");
    ASSERT_TRUE(leap) << print(leap.error().front());
    EXPECT_EQ(leap->hours.size(), 8784u);
    // One day more of 2.8 kWh/m2 than 1022.
    EXPECT_NEAR(summary(*leap).global / kilowatt_hour_per_square_metre, 1024.8, 1e-6);
    const HourOfWeather& added = leap->hours[(31 + 28) * 24];
    EXPECT_EQ(added.month, 2);
    EXPECT_EQ(added.date, 29);
}

TEST(data_base_year, columns_and_labels_are_found_by_name_in_any_order) {
    std::string text = nsrdb_text(plain_hour);
    text = with(text, "DHI,DNI,GHI,Surface Albedo,Temperature",
                "DHI,DNI,GHI,Clearsky GHI,Relative Humidity");
    text = with(text, "NSRDB,999999,-,", "NSRDB,999999,Springfield,");
    const auto year = read_weather(text, "").value();
    EXPECT_EQ(year.station, "Springfield");
    EXPECT_FALSE(year.hours[12].air);  // none was asked for
    EXPECT_FALSE(year.hours[12].ground);
    EXPECT_EQ(summary(year).without_air, 8760);
    EXPECT_NEAR(summary(year).global / kilowatt_hour_per_square_metre, 1022.0, 1e-6);
}

TEST(data_base_year, universal_time_is_refused_with_what_to_ask_for) {
    const auto words = refusal(with(nsrdb_text(plain_hour), "-90.0,-6,", "-90.0,0,"));
    EXPECT_TRUE(holds(words, "year.csv:2")) << words;
    EXPECT_TRUE(holds(words, "local time")) << words;
    EXPECT_TRUE(holds(words, "utc=false")) << words;
}

TEST(data_base_year, rows_less_than_an_hour_apart_are_refused_at_the_first) {
    std::string half_hours = with(nsrdb_text(plain_hour), "2020,1,1,0,30,", "2020,1,1,0,0,");
    EXPECT_TRUE(holds(refusal(half_hours), "year.csv:5")) << refusal(half_hours);
    EXPECT_TRUE(holds(refusal(half_hours), "interval=60"));
    const auto quarters = refusal(nsrdb_text(plain_hour, "\n", 15));
    EXPECT_TRUE(holds(quarters, "year.csv:4")) << quarters;
    EXPECT_TRUE(holds(quarters, "neither 0 nor 30")) << quarters;
}

TEST(data_base_year, what_is_missing_or_in_other_units_is_named_with_its_line) {
    const std::string whole = nsrdb_text(plain_hour);
    const auto no_direct = refusal(with(whole, "DHI,DNI,GHI,", "DHI,GHI,GHI,"));
    EXPECT_TRUE(holds(no_direct, "year.csv:3")) << no_direct;
    EXPECT_TRUE(holds(no_direct, "\"DNI\"")) << no_direct;
    const auto no_zone = refusal(with(whole, "Longitude,Time Zone,", "Longitude,Zone,"));
    EXPECT_TRUE(holds(no_zone, "year.csv:1")) << no_zone;
    EXPECT_TRUE(holds(no_zone, "\"Time Zone\"")) << no_zone;
    const auto fahrenheit = refusal(with(whole, "w/m2,c,", "w/m2,f,"));
    EXPECT_TRUE(holds(fahrenheit, "year.csv:2")) << fahrenheit;
    EXPECT_TRUE(holds(fahrenheit, "Temperature Units")) << fahrenheit;
    const auto word = refusal(with(whole, "2020,1,1,12,30,100,", "2020,1,1,12,30,much,"));
    EXPECT_TRUE(holds(word, "year.csv:16")) << word;  // three lines, then hours 0 to 12
    EXPECT_TRUE(holds(word, "not a number")) << word;
    EXPECT_TRUE(holds(refusal("Source,Location ID\n"), "labels"));
}

// A file that is cut off, or has a row twice, is no year.
TEST(data_base_year, a_year_must_be_whole_and_in_order) {
    const std::string whole = nsrdb_text(plain_hour);
    EXPECT_TRUE(holds(refusal(whole.substr(0, whole.rfind("2020,12,31,23"))), "8759 hours"));
    const auto twice = refusal(with(whole, "2020,1,1,5,30", "2020,1,1,4,30"));
    EXPECT_TRUE(holds(twice, "hour 6 of the year")) << twice;
}

}  // namespace
