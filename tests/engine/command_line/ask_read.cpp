#include <filesystem>

#include "typed.hpp"

#include "support/weather_text.hpp"

namespace {

using testing::HasSubstr;
using typed::candlemark;
using typed::file_with;

const std::string lamp = R"(format = 1
title = "A lamp for an evening"
[outage]
starts = 2026-07-01T18:00:00
lasts = "6 h"
[[pack]]
name = "main"
chemistry = "lifepo4"
capacity = "100 Ah"
voltage = "12.8 V"
[[load]]
name = "lamp"
from = "12V"
power = "5 W"
priority = 3
)";

TEST(candlemark_read, tells_what_was_given_and_what_holds_where_the_file_is_silent) {
    const auto path = file_with(lamp, "lamp.toml");
    const auto ended = candlemark({"read", path});
    EXPECT_EQ(ended.status, 0) << ended.errors;
    EXPECT_THAT(ended.output, HasSubstr("100 Ah"));
    EXPECT_THAT(ended.output, HasSubstr("lamp"));
    EXPECT_THAT(candlemark({"read", path, "--full"}).output, HasSubstr("Not given"));
}

TEST(candlemark_read, warns_of_a_key_it_does_not_know) {
    const auto ended = candlemark({"read", "-"}, lamp + "colour = \"red\"\n");
    EXPECT_EQ(ended.status, 0);
    EXPECT_THAT(ended.output, HasSubstr("colour"));
    EXPECT_THAT(ended.output, HasSubstr("Caution"));
    EXPECT_THAT(candlemark({"outage", "-"}, lamp + "colour = \"red\"\n").errors,
                HasSubstr("warning"));
}

TEST(candlemark_read, tells_what_was_understood_of_a_weather_file) {
    const std::filesystem::path weather =
        file_with(test_support::tmy3_text(test_support::plain_hour), "understood.csv");
    const auto place = "[place]\nweather_file = \"" + weather.filename().string() + "\"\n";
    const auto ended = candlemark({"read", file_with(lamp + place, "understood.toml")});
    EXPECT_EQ(ended.status, 0) << ended.errors;
    EXPECT_THAT(ended.output, HasSubstr("a TMY3"));
    EXPECT_THAT(ended.output, HasSubstr("MADE UP, FIELD"));
    EXPECT_THAT(ended.output, HasSubstr("1022.000 kWh"));  // 350 W x 8 h x 365
    EXPECT_THAT(ended.output, HasSubstr("8760"));
    const std::filesystem::path other =
        file_with(test_support::nsrdb_text(test_support::plain_hour), "data_base.csv");
    const auto there = "[place]\nweather_file = \"" + other.filename().string() + "\"\n";
    const auto read = candlemark({"read", file_with(lamp + there, "understood.toml")});
    EXPECT_THAT(read.output, HasSubstr("NSRDB 999999"));
    EXPECT_THAT(read.output, HasSubstr("1022.000 kWh"));
}

}  // namespace
