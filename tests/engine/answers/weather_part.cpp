#include "answers/weather_part.hpp"

#include <gtest/gtest.h>

#include "support/weather_text.hpp"

namespace {

using namespace answers;

double number(const Answer& answer, std::string_view path) {
    return std::get<Quantity>(value_at(answer.values, path)->held).value;
}

// Eight hours of 350, 500 and 100 W/m2 on each of 365 days: 1022, 1460 and 292 kWh/m2 in a year.
// Every day is as dull as the others: 2.8 kWh/m2, three of them 8.4.
TEST(weather_part, the_sums_of_a_year_are_those_of_its_hours) {
    auto year = solar::read_weather(test_support::epw_text(test_support::plain_hour), "made.epw");
    ASSERT_TRUE(year);
    const auto sums = solar::summary(*year);
    Answer answer;
    add_weather(answer, "made.epw", {*year, sums, solar::oddities_of(sums), {}});
    const double kilo = number(answer, "weather_file.global") / 1022.0;
    EXPECT_NEAR(number(answer, "weather_file.direct") / kilo, 1460.0, 1e-6);
    EXPECT_NEAR(number(answer, "weather_file.diffuse") / kilo, 292.0, 1e-6);
    EXPECT_NEAR(number(answer, "weather_file.worst_day") / kilo, 2.8, 1e-9);
    EXPECT_NEAR(number(answer, "weather_file.worst_three_days") / kilo, 8.4, 1e-9);
    EXPECT_EQ(answer.sentences.back(),
              "The weather file made.epw is an EPW year of Made Up Field: 8760 hours, 1022 kWh/m² "
              "of sun a year on level ground.");
    ASSERT_EQ(answer.series.size(), 1U);
    EXPECT_EQ(answer.series[0].columns.size(), 2U);  // no temperatures were given
}

TEST(weather_part, what_is_odd_in_it_is_a_finding_of_the_file) {
    Answer answer;
    solar::WeatherYear year;
    solar::WeatherSummary sums;
    add_weather(answer, "made.epw",
                {year, sums, {{scenario::Severity::stop, "the clock is off", "mend it"}}, {}});
    ASSERT_EQ(answer.findings.size(), 1U);
    EXPECT_EQ(answer.findings[0].finding.where, "place.weather_file");
    EXPECT_EQ(answer.findings[0].finding.text, "The clock is off.");
}

}  // namespace
