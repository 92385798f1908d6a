// What the readers of all forms of a weather file share.
#include "solar/weather/weather_reader.hpp"

namespace {

using namespace units;
using namespace solar;

const std::string file = "field.csv";

WeatherReader reader() {
    return {.file = file, .year = {}, .columns = {}, .errors = {}, .line = 7, .lines = {}};
}

TEST(weather_reader, a_cell_is_a_number_within_bounds_or_named_without_what_is_in_it) {
    WeatherReader reading = reader();
    const Cells cells{"12.5", "", "tulips", "99", "-99"};
    EXPECT_EQ(reading.within(cells, 0, "warmth", -90.0, 70.0), 12.5);
    for (std::size_t column = 1; column < 6; ++column)
        EXPECT_FALSE(reading.within(cells, column, "warmth", -90.0, 70.0)) << column;
    ASSERT_EQ(reading.errors.size(), 5U);
    EXPECT_EQ(reading.errors[0].found, "column 2 (warmth): the cell is empty");
    EXPECT_EQ(reading.errors[1].found, "column 3 (warmth): the cell is not a number");
    EXPECT_EQ(reading.errors[1].where, "");
    EXPECT_EQ(reading.errors[1].line, 7);
    EXPECT_EQ(reading.errors[2].found, "column 4 (warmth): the number is too large");
    EXPECT_EQ(reading.errors[3].found, "column 5 (warmth): the number is too small");
    EXPECT_EQ(reading.errors[4].found, "column 6 (warmth): the cell is empty");  // past the row
    EXPECT_EQ(reading.errors[4].remedy, "give a number from −90 to 70");
}

TEST(weather_reader, twenty_errors_are_enough) {
    WeatherReader reading = reader();
    for (int i = 0; i < 30; ++i)
        reading.refuse("row", "found", "remedy");
    EXPECT_EQ(reading.errors.size(), 20U);
    EXPECT_TRUE(reading.is_full());
}

// Chicago lies 87.9 degrees west: the sun is 5.86 h behind Greenwich, its clock 6 h.
TEST(weather_reader, a_station_has_a_clock_that_goes_with_its_longitude) {
    WeatherReader good = reader();
    read_coordinates(good, {"-6", "41.98", "-87.9", "201"}, 0, 1, 2, 3);
    EXPECT_TRUE(good.errors.empty());
    EXPECT_EQ(good.year.utc_offset, -6.0 * hour);
    EXPECT_NEAR(good.year.at.latitude / degree, 41.98, 1e-12);
    EXPECT_NEAR(good.year.elevation / metre, 201.0, 1e-12);
    WeatherReader east = reader();
    read_coordinates(east, {"6", "41.98", "-87.9", "201"}, 0, 1, 2, 3);
    ASSERT_EQ(east.errors.size(), 1U);
    // 6 h and 5.86 h the other way.
    EXPECT_EQ(east.errors[0].found,
              "column 1 (UTC offset): the clock is 11.9 h from the sun at that longitude");
}

TEST(weather_reader, names_of_stations_are_fit_to_be_shown) {
    WeatherReader reading = reader();
    name_station(reading, "Z\u00FCrich");
    EXPECT_EQ(reading.year.station, "Z\u00FCrich");
    EXPECT_FALSE(reading.year.letters_guessed);
    name_station(reading, "Z\xFCrich");
    EXPECT_EQ(reading.year.station, "Z\u00FCrich");
    EXPECT_TRUE(reading.year.letters_guessed);
    EXPECT_TRUE(is_blank(" ,,\t,"));
    EXPECT_FALSE(is_blank(",0,"));
}

// 9999 and 99.9 are codes for missing [EPW]; 1,600 W/m2 is more than the sun gives.
TEST(weather_reader, a_row_is_an_hour_with_what_is_missing_left_out) {
    WeatherReader reading = reader();
    reading.columns = {.global = 0,
                       .direct = 1,
                       .diffuse = 2,
                       .air = 3,
                       .ground = 4,
                       .snow = std::nullopt,
                       .needed = 4};
    add_hour(reading, {"350", "9999", "100", "99.9", "0.6"}, 3.0, 1.0, 12.0);
    ASSERT_EQ(reading.year.hours.size(), 1U);
    const HourOfWeather& row = reading.year.hours[0];
    EXPECT_EQ(row.global->value(), 350.0);
    EXPECT_FALSE(row.direct);
    EXPECT_FALSE(row.air);
    EXPECT_EQ(row.ground->value(), 0.6);
    EXPECT_EQ(reading.lines, std::vector<int>{7});
    add_hour(reading, {"350", "0", "1600", "10", "0.6"}, 3.0, 1.0, 13.0);
    EXPECT_EQ(reading.errors.size(), 1U);
    add_hour(reading, {"350"}, 2.0, 30.0, 1.0);
    EXPECT_EQ(reading.errors.size(), 3U);  // no such day, and too few cells
}

}  // namespace
