// What real weather files do that a first reader trips over, each on a small file made here.
#include <functional>

#include "solar/weather/weather_summary.hpp"
#include "support/weather_text.hpp"

namespace {

using namespace units;
using namespace solar;
using test_support::epw_text;
using test_support::MadeHour;
using test_support::plain_hour;
using test_support::tmy3_text;

std::string everywhere(std::string text, const std::string& from, const std::string& to) {
    for (std::size_t at = 0; (at = text.find(from, at)) != std::string::npos; at += to.size())
        text.replace(at, from.size(), to);
    return text;
}

std::string with(std::string text, const std::string& from, const std::string& to) {
    const std::size_t at = text.find(from);
    EXPECT_NE(at, std::string::npos) << from;
    return text.replace(at, from.size(), to);
}

// Mornings of light that closes when the sun is looked at so many hours before each label. Over a
// whole day what half an hour adds in the morning it takes in the evening.
MadeHour closing(int day, int hour, double before_label) {
    const Coordinates place{40.0 * degree, -90.0 * degree};
    const LocalTime when =
        local_time(std::chrono::year(2026) / 1 / 1, double(day) * 24.0 * units::hour) +
        (hour - before_label) * units::hour;
    const double height =
        std::cos(sun_position(place, instant(when, -6.0 * units::hour)).zenith / radian);
    if (height < 0.02 || hour > 12) return {};
    return {.global = 500.0 * height + 100.0, .direct = 500.0, .diffuse = 100.0};
}

WeatherSummary closing_year(double before_label) {
    return summary(
        read_weather(epw_text([&](int day, int hour) { return closing(day, hour, before_label); }),
                     "")
            .value());
}

TEST(weather_pitfalls, hours_are_named_by_their_end) {
    const auto sums = closing_year(0.5);
    EXPECT_NEAR(sums.closure, 1.0, 0.001);
    EXPECT_GT(std::abs(sums.closure_at_the_hours_end - 1.0), 0.003);
    EXPECT_FALSE(sums.half_an_hour_off);
}

TEST(weather_pitfalls, a_station_whose_light_is_half_an_hour_late_is_found) {
    const auto sums = closing_year(0.0);
    EXPECT_NEAR(sums.closure_at_the_hours_end, 1.0, 0.001);
    EXPECT_TRUE(sums.half_an_hour_off);
}

TEST(weather_pitfalls, light_with_the_sun_below_the_horizon_is_no_fault) {
    const auto made = [](int day, int hour) {
        return hour == 3 ? MadeHour{.global = 5.0, .direct = 0.0, .diffuse = 5.0}
                         : plain_hour(day, hour);
    };
    EXPECT_TRUE(read_weather(epw_text(made), ""));
}

TEST(weather_pitfalls, hour_24_belongs_to_its_own_date) {
    const auto made = [](int day, int hour) {
        auto hour_made = plain_hour(day, hour);
        if (day == 30 && hour == 24) hour_made.air = -33.0;  // 31 January
        return hour_made;
    };
    for (const auto& text : {epw_text(made), tmy3_text(made)}) {
        const auto year = read_weather(text, "").value();
        const auto& last_of_january = year.hours[31 * 24 - 1];
        EXPECT_EQ(last_of_january.month, 1);
        EXPECT_EQ(last_of_january.date, 31);
        EXPECT_EQ(last_of_january.hour, 24);
        EXPECT_NEAR(in_celsius(*last_of_january.air), -33.0, 1e-9);
    }
}

// Each month of the made-up files is of another year: 1971, 1972, … 1982.
TEST(weather_pitfalls, the_year_may_jump_from_month_to_month_and_nothing_is_sorted) {
    std::string text = epw_text(plain_hour);
    for (int month = 1; month <= 12; ++month)
        text = everywhere(text, fmt::format("\n{},{},", 1970 + month, month),
                          fmt::format("\n{},{},", 2010 - month, month));
    const auto year = read_weather(text, "").value();
    EXPECT_EQ(year.hours.front().month, 1);
    EXPECT_EQ(year.hours.back().month, 12);
    EXPECT_EQ(summary(year).global, summary(read_weather(epw_text(plain_hour), "").value()).global);
}

TEST(weather_pitfalls, the_minute_of_an_epw_row_may_be_0_or_30_or_60) {
    const std::string sixty = epw_text(plain_hour);
    const auto global = [](const std::string& text) {
        return summary(read_weather(text, "").value()).global;
    };
    for (const char* minute : {",0,?9,", ",30,?9,"})
        EXPECT_EQ(global(everywhere(sixty, ",60,?9,", minute)), global(sixty));
}

TEST(weather_pitfalls, a_leap_year_has_8784_hours) {
    std::string text = epw_text(plain_hour);
    const std::size_t march = text.find("\n1973,3,1,1,") + 1;
    std::string leap_day;
    for (int hour = 1; hour <= 24; ++hour)
        leap_day += fmt::format(
            "1972,2,29,{},60,?9,5,5,70,99000,0,0,300,7,0,7,0,0,0,0,180,3.0,5,5,9999,9999,9,"
            "999999999,10,0.1,0,88,0.2,0,0\n",
            hour);
    text.insert(march, leap_day);
    const auto year = read_weather(text, "");
    ASSERT_TRUE(year) << year.error()[0].found;
    EXPECT_EQ(summary(*year).hours, 8784);
    EXPECT_NEAR(summary(*year).global / kilowatt_hour_per_square_metre,
                0.350 * 8 * 365 + 0.007 * 24, 1e-6);
}

TEST(weather_pitfalls, names_may_be_quoted_hold_commas_and_letters_of_any_language) {
    const auto tmy3 =
        read_weather(with(tmy3_text(plain_hour), "MADE UP, FIELD", "São João, Nordpol"), "");
    EXPECT_EQ(tmy3.value().station, "São João, Nordpol");
    const auto epw = read_weather(with(epw_text(plain_hour), "Made Up Field", "Zürich-Kloten"), "");
    EXPECT_EQ(epw.value().station, "Zürich-Kloten");
    EXPECT_TRUE(read_weather("\xEF\xBB\xBF" + epw_text(plain_hour), ""));
}

TEST(weather_pitfalls, albedo_may_be_given_for_some_hours_and_missing_for_others) {
    std::string text = epw_text(plain_hour);
    text = with(text, "88,999.000,0,0\n1971,1,1,2,", "88,0.160,0,0\n1971,1,1,2,");
    const auto year = read_weather(text, "").value();
    EXPECT_NEAR(year.hours[0].ground->value(), 0.16, 1e-12);
    EXPECT_FALSE(year.hours[1].ground);
}

// Files of 68 and of 71 columns exist: the headings say where things stand.
TEST(weather_pitfalls, columns_are_found_by_their_headings_and_not_by_their_number) {
    std::string text = tmy3_text(plain_hour);
    const auto plain = summary(read_weather(text, "").value());
    std::string moved;
    std::size_t begins = 0;
    for (int line = 1; begins < text.size(); ++line) {
        const std::size_t ends = text.find('\n', begins);
        std::string row = text.substr(begins, ends - begins);
        if (line == 2)
            row.insert(row.find(",ETR ("), ",Remark,Another");
        else if (line > 2)
            row.insert(row.find(",0,"), ",7777,8888");
        moved += row + "\n";
        begins = ends + 1;
    }
    const auto sums = summary(read_weather(moved, "").value());
    EXPECT_EQ(sums.global, plain.global);
    EXPECT_EQ(sums.direct, plain.direct);
    EXPECT_EQ(*sums.mean, *plain.mean);
}

TEST(weather_pitfalls, west_is_negative_and_summer_time_is_never_added) {
    std::string text = epw_text(plain_hour);
    text =
        with(text, "HOLIDAYS/DAYLIGHT SAVINGS,No,0,0,0", "HOLIDAYS/DAYLIGHT SAVINGS,No,3/8,11/1,0");
    const auto year = read_weather(text, "").value();
    EXPECT_EQ(year.utc_offset, -6.0 * hour);
    EXPECT_NEAR(year.at.longitude / degree, -90.0, 1e-12);
    EXPECT_EQ(year.hours[180 * 24 + 8].global, year.hours[8].global);  // July as January
}

TEST(weather_pitfalls, missing_light_counts_as_dark_and_is_counted) {
    const auto made = [](int day, int hour) {
        if (day < 10) return MadeHour{9999.0, 9999.0, 9999.0, 99.9};
        return plain_hour(day, hour);
    };
    const auto sums = summary(read_weather(epw_text(made), "").value());
    // Ten days from 9 h 22 min to 9 h 30 min long touch ten clock hours each; the nights are dark
    // with or without a code.
    EXPECT_EQ(sums.missing, 100);
    EXPECT_NEAR(sums.global / kilowatt_hour_per_square_metre, 0.350 * 8 * 355, 1e-6);
    EXPECT_EQ(sums.worst_three_days, Irradiation{});
    EXPECT_EQ(sums.worst_three_days_month, 1);
    EXPECT_EQ(sums.worst_three_days_date, 1);
}

}  // namespace
