#include "solar/weather/weather_file.hpp"

#include <filesystem>
#include <fstream>
#include <sys/stat.h>

#include "solar/weather/typical_sky.hpp"
#include "solar/weather/weather_summary.hpp"
#include "support/weather_text.hpp"

namespace {

using namespace units;
using namespace solar;
using test_support::epw_text;
using test_support::MadeHour;
using test_support::nsrdb_text;
using test_support::plain_hour;
using test_support::tmy3_text;

std::string with(std::string text, const std::string& from, const std::string& to) {
    const std::size_t at = text.find(from);
    EXPECT_NE(at, std::string::npos) << from;
    return text.replace(at, from.size(), to);
}

Errors errors_of(const std::string& text) {
    const auto year = read_weather(text, "field.csv");
    EXPECT_FALSE(year);
    return year ? Errors{} : year.error();
}

TEST(weather_file, both_formats_of_one_year_give_equal_sums) {
    for (const char* line_end : {"\n", "\r\n"}) {
        const auto tmy3 = read_weather(tmy3_text(plain_hour, line_end), "a");
        const auto epw = read_weather(epw_text(plain_hour, line_end), "b");
        ASSERT_TRUE(tmy3) << tmy3.error()[0].found;
        ASSERT_TRUE(epw) << epw.error()[0].found;
        EXPECT_EQ(tmy3->format, WeatherFormat::tmy3);
        EXPECT_EQ(epw->format, WeatherFormat::epw);
        for (const WeatherYear& year : {*tmy3, *epw}) {
            const WeatherSummary sums = summary(year);
            EXPECT_EQ(sums.hours, 8760);
            EXPECT_EQ(sums.missing, 0);
            EXPECT_NEAR(sums.global / kilowatt_hour_per_square_metre, 0.350 * 8 * 365, 1e-6);
            EXPECT_NEAR(sums.direct / kilowatt_hour_per_square_metre, 0.500 * 8 * 365, 1e-6);
            EXPECT_NEAR(sums.diffuse / kilowatt_hour_per_square_metre, 0.100 * 8 * 365, 1e-6);
            EXPECT_NEAR(in_celsius(*sums.mean), 7.5, 0.05);
            EXPECT_NEAR(in_celsius(*sums.coldest), -5.0, 0.05);
            EXPECT_NEAR(in_celsius(*sums.warmest), 20.0, 0.05);
        }
        EXPECT_EQ(tmy3->station, "MADE UP, FIELD");
        EXPECT_NEAR(tmy3->hours[0].ground->value(), 0.16, 1e-12);
        EXPECT_FALSE(epw->hours[0].ground);  // 999.000
    }
}

TEST(weather_file, codes_for_missing_light_and_warmth_are_never_energy) {
    const auto made = [](int day, int hour) {
        if (day == 100 && hour == 12) return MadeHour{9999.0, 9999.0, 9999.0, 99.9};
        return plain_hour(day, hour);
    };
    const WeatherYear epw = read_weather(epw_text(made), "").value();
    EXPECT_FALSE(epw.hours[100 * 24 + 11].global || epw.hours[100 * 24 + 11].air);
    EXPECT_EQ(summary(epw).missing, 1);
    EXPECT_NEAR(summary(epw).global / kilowatt_hour_per_square_metre, 0.350 * (8 * 365 - 1), 1e-6);
    const auto saved_again = [](int day, int hour) {
        if (day == 100 && hour == 12) return MadeHour{-9900.0, -9900.0, -9900.0, -9900.0};
        return plain_hour(day, hour);
    };
    EXPECT_EQ(summary(read_weather(tmy3_text(saved_again), "").value()).missing, 1);
}

TEST(weather_file, a_file_saved_again_by_a_spreadsheet_is_read) {
    std::string text = tmy3_text(plain_hour);
    text = with(text, "01/01/1971,24:00", "1/1/1971,24:00:00");
    text = with(text, "01/01/1971,01:00", "1/1/1971,1:00");
    text = with(text, "\"MADE UP, FIELD\",IL,-6.0,40.000,-90.000,200",
                "MADE UP FIELD,IL,-6,40,-90,200,,,,");
    const auto year = read_weather(text, "");
    ASSERT_TRUE(year) << year.error()[0].where << year.error()[0].found;
    EXPECT_EQ(year->station, "MADE UP FIELD");
}

TEST(weather_file, every_bad_cell_is_named_with_its_line_and_column) {
    std::string text = epw_text(plain_hour);
    text = with(text, "1971,1,1,12,60,?9,-4", "1971,1,1,12,60,?9,hot-4");
    text = with(text, "1973,3,1,12,60,", "1973,13,1,12,60,");
    const Errors errors = errors_of(text);
    ASSERT_EQ(errors.size(), 2u);
    EXPECT_EQ(errors[0].line, 8 + 12);
    EXPECT_NE(in_english(errors[0].found).find("column 7"), std::string::npos);
    EXPECT_EQ(errors[0].found, "column 7 (dry bulb): the cell is not a number");
    EXPECT_EQ(errors[1].line, 8 + (31 + 28) * 24 + 12);
    EXPECT_NE(in_english(errors[1].found).find("column 2"), std::string::npos);
}

TEST(weather_file, light_below_nothing_or_above_the_sun_is_refused) {
    for (const double light : {-5.0, 1600.0}) {
        const auto made = [light](int day, int hour) {
            MadeHour hour_made = plain_hour(day, hour);
            if (day == 3 && hour == 12) hour_made.global = light;
            return hour_made;
        };
        EXPECT_EQ(errors_of(tmy3_text(made))[0].line, 2 + 3 * 24 + 12);
        EXPECT_EQ(errors_of(epw_text(made))[0].line, 8 + 3 * 24 + 12);
    }
}

TEST(weather_file, a_year_must_be_whole_and_in_order) {
    const std::string whole = epw_text(plain_hour);
    EXPECT_EQ(errors_of(whole.substr(0, whole.size() / 2 + 10)).empty(), false);
    std::string twice = with(whole, "1971,1,1,2,", "1971,1,1,1,");
    EXPECT_NE(in_english(errors_of(twice)[0].found).find("hour 2 of the year"), std::string::npos);
}

TEST(weather_file, a_clock_far_from_its_longitude_is_refused) {
    EXPECT_NE(
        in_english(errors_of(with(epw_text(plain_hour), "-90.000,-6.0", "-90.000,6.0"))[0].found)
            .find("UTC offset"),
        std::string::npos);
    EXPECT_FALSE(errors_of(with(epw_text(plain_hour), "40.000,", "140.000,")).empty());
}

TEST(weather_file, something_else_is_no_weather_file) {
    const char* const not_a_weather_file = "format: the first line is not that of a weather file";
    EXPECT_EQ(errors_of("")[0].found, not_a_weather_file);
    EXPECT_EQ(errors_of("name,value\n1,2\n")[0].found, not_a_weather_file);
    EXPECT_FALSE(read_weather_file("no/such/file.epw"));
    EXPECT_FALSE(errors_of("725300,a,b,-6,40,-90,200\nno,headings\n").empty());
}

// A scenario that comes from somebody else may name any file of the person's: not a word of it is
// told, wherever the word stands and however far the reader gets.
TEST(weather_file, no_error_holds_anything_of_the_file) {
    const std::string secret = "7-tulips-7";
    const std::string whole_epw = epw_text(plain_hour);
    const std::string whole_tmy3 = tmy3_text(plain_hour);
    const std::string whole_nsrdb = nsrdb_text(plain_hour);
    std::vector<std::string> texts{
        secret,
        secret + ",a,b\n",
        "LOCATION," + secret + "\n",
        "Source," + secret + "\n" + secret + "\n",
        "Source,Latitude,Longitude,Time Zone,Elevation\n" + secret + ",1,1,1,1\n",
        "LOCATION,a,b,c,d,e," + secret + ",1,1,1\n",
        "7," + secret + ",s," + secret + "," + secret + ",4,5\n" + secret,
        "7,a,b,-6,40,-90,200\n" + secret + "," + secret + "\n"};
    for (const std::string& whole : {whole_epw, whole_tmy3, whole_nsrdb}) {
        const std::size_t row = whole.find('\n', whole.size() / 2) + 1;
        for (std::size_t cell = row, number = 0; number < 20; ++number) {
            std::string changed = whole;
            const std::size_t end = changed.find_first_of(",\n", cell);
            texts.push_back(changed.replace(cell, end - cell, secret));
            cell = whole.find_first_of(",\n", cell) + 1;
        }
        texts.push_back(whole.substr(0, row) + secret + "\n" + whole.substr(row));
    }
    int refused = 0;
    for (const std::string& text : texts) {
        const auto year = read_weather(text, "f");
        if (year) continue;
        ++refused;
        for (const Error& error : year.error())
            EXPECT_EQ(print(error).find("tulips"), std::string::npos) << print(error);
    }
    EXPECT_GT(refused, 15);
}

TEST(weather_file, a_heading_that_is_not_utf_8_is_read_as_latin_1_and_that_is_told) {
    const auto year = read_weather(with(epw_text(plain_hour), "Made Up Field", "Z\xFCrich"), "");
    EXPECT_EQ(year.value().station, "Zürich");
    EXPECT_TRUE(year.value().letters_guessed);
    const auto utf8 = read_weather(with(epw_text(plain_hour), "Made Up Field", "Zürich"), "");
    EXPECT_EQ(utf8.value().station, "Zürich");
    EXPECT_FALSE(utf8.value().letters_guessed);
    const auto turned = read_weather(with(epw_text(plain_hour), "Made Up", "Made\u202E Up"), "");
    EXPECT_EQ(turned.value().station, "Made\\u{202e} Up Field");
}

TEST(weather_file, only_a_plain_file_of_a_years_size_is_read) {
    const auto folder = std::filesystem::temp_directory_path() / "candlemark_weather_file";
    std::filesystem::remove_all(folder);
    std::filesystem::create_directories(folder);
    const auto words = [&](const std::string& path) {
        const auto year = read_weather_file(path);
        return year ? std::string("read") : print(year.error().front());
    };
    const auto holds = [](const std::string& text, const char* part) {
        return text.find(part) != std::string::npos;
    };
    const std::string pipe = folder / "pipe.epw";
    ASSERT_EQ(mkfifo(pipe.c_str(), 0600), 0);
    std::ofstream(folder / "large.epw").close();
    std::filesystem::resize_file(folder / "large.epw", 100'000'000);
    std::ofstream(folder / "empty.epw").close();
    EXPECT_TRUE(holds(words(folder), "folder")) << words(folder);
    EXPECT_TRUE(holds(words(pipe), "pipe")) << words(pipe);
    EXPECT_TRUE(holds(words("/dev/zero"), "device"));
    EXPECT_TRUE(holds(words(folder / "large.epw"), "more than 10000000 bytes"));
    EXPECT_TRUE(holds(words(folder / "empty.epw"), "empty"));
    EXPECT_TRUE(holds(words(folder / "missing.epw"), "no such file"));
    EXPECT_TRUE(holds(words(folder / "missing.epw"), "place.weather_file"));
    std::filesystem::remove_all(folder);
}

}  // namespace
