#include <filesystem>
#include <fstream>

#include "typed.hpp"
#include <nlohmann/json.hpp>

#include "support/weather_text.hpp"

namespace {

using testing::HasSubstr;
using typed::candlemark;
using typed::file_with;

const std::string demo = std::string(CANDLEMARK_SOURCE_DIR) + "/scenarios/ice_storm.toml";

std::string on_a_weather_file(const std::string& name) {
    return R"(format = 1
title = "By the hours of a file"
[outage]
starts = 2026-01-14T18:00:00
lasts = "3 d"
[place]
weather_file = ")" +
           name + R"("
[[pack]]
name = "main"
chemistry = "lifepo4"
capacity = "100 Ah"
[[panel]]
count = 2
power = "100 W"
placement = "fixed"
tilt = "60 deg"
[[load]]
name = "lamp"
from = "12V"
power = "20 W"
)";
}

// A scenario that names a weather file, and that file beside it.
std::string beside(const std::string& weather, const std::string& name) {
    const std::filesystem::path file = file_with(weather, name);
    return file_with(on_a_weather_file(file.filename().string()), name + ".toml");
}

TEST(candlemark_sun, answers_the_demo_with_days_placements_and_counts) {
    const auto ended = candlemark({"sun", demo});
    EXPECT_EQ(ended.status, 0) << ended.errors;
    EXPECT_THAT(ended.output, HasSubstr("Three panels at Chicago IL give back"));
    EXPECT_THAT(ended.output, HasSubstr("flat on the ground"));
    EXPECT_THAT(ended.output, HasSubstr("7 panels"));
}

TEST(candlemark_sun, json_holds_ranges_in_order_and_no_number_that_is_none) {
    const auto ended = candlemark({"sun", demo, "--as", "json", "--weathers", "300"});
    const auto answer = nlohmann::json::parse(ended.output)["answer"];
    const auto value = [&](const char* end) {
        return answer["recharge"][end]["value"].get<double>();
    };
    EXPECT_LT(value("low"), value("likely"));
    EXPECT_LT(value("likely"), value("high"));
    EXPECT_TRUE(answer["weathers"].is_null());
    EXPECT_LE(answer["shares"]["stored"]["value"], answer["shares"]["offered"]["value"]);
    EXPECT_EQ(answer["days"].size(), 5u);
    EXPECT_EQ(answer["panels"].size(), 8u);
    EXPECT_EQ(answer["panels"][0]["panels"], 0);
}

TEST(candlemark_sun, weathers_are_members_as_in_every_question) {
    const auto of = [](const char* option) {
        const auto ended =
            candlemark({"sun", demo, "--as", "json", "--panels", "3", option, "130"});
        EXPECT_EQ(ended.status, 0) << ended.errors;
        return nlohmann::json::parse(ended.output)["answer"];
    };
    const auto answer = of("--weathers");
    EXPECT_EQ(answer, of("--members"));
    EXPECT_EQ(answer["panels"][3]["members"], 192);
}

TEST(candlemark_sun, the_same_seed_prints_the_same_bytes) {
    const auto once = candlemark({"sun", demo, "--seed", "9", "--weathers", "200"});
    EXPECT_EQ(once.output, candlemark({"sun", demo, "--seed", "9", "--weathers", "200"}).output);
}

TEST(candlemark_sun, runs_an_outage_on_the_hours_of_a_file_that_lies_beside_it) {
    const auto path = beside(test_support::epw_text(test_support::plain_hour), "hours.epw");
    const auto sun = candlemark({"sun", path, "--as", "json"});
    EXPECT_EQ(sun.status, 0) << sun.errors;
    EXPECT_THAT(sun.output, HasSubstr("start dates in the weather file"));
    const auto outage = candlemark({"outage", path, "--as", "json"});
    EXPECT_THAT(outage.output, HasSubstr("The weather file is one year"));
}

TEST(candlemark_sun, a_broken_weather_file_is_told_by_row_and_column_for_every_fault) {
    std::string text = test_support::epw_text(test_support::plain_hour);
    const std::string first = "1971,1,1,12,60,?9,-4";
    text.replace(text.find(first), first.size(), "1971,1,1,12,60,?9,warm");
    const std::string second = "1971,1,2,13,60,?9,";
    text.replace(text.find(second), second.size(), "1971,14,2,13,60,?9,");
    const auto path = beside(text, "broken.epw");
    for (const char* question : {"sun", "outage", "read"}) {
        const auto ended = candlemark({question, path});
        EXPECT_EQ(ended.status, 2) << question;
        EXPECT_THAT(ended.errors, HasSubstr("broken.epw:20"));
        EXPECT_THAT(ended.errors, HasSubstr("column 7"));
        EXPECT_THAT(ended.errors, HasSubstr("broken.epw:45"));
        EXPECT_THAT(ended.errors, HasSubstr("column 2"));
    }
}

// The weather lies outside the scenario's folder: refused with what to do, and read when asked.
TEST(candlemark_sun, a_weather_file_from_elsewhere_is_read_only_where_the_person_says_so) {
    namespace fs = std::filesystem;
    const fs::path folder = fs::path(CANDLEMARK_BINARY_DIR) / "elsewhere";
    fs::remove_all(folder);
    fs::create_directories(folder / "plan");
    fs::create_directories(folder / "weather" / "below");
    std::ofstream(folder / "weather" / "below" / "station.epw")
        << test_support::epw_text(test_support::plain_hour);
    fs::create_symlink("../weather/below/station.epw", folder / "plan" / "link.epw");
    const std::string station = folder / "weather" / "below" / "station.epw";
    const std::string path = folder / "plan" / "plan.toml";
    for (const std::string& named :
         {std::string("../weather/below/station.epw"), station, std::string("link.epw")}) {
        std::ofstream(path) << on_a_weather_file(named);
        for (const char* question : {"outage", "sun", "packs", "read"}) {
            const auto refused = candlemark({question, path});
            EXPECT_EQ(refused.status, 2) << question << named;
            EXPECT_THAT(refused.errors, HasSubstr("outside the folder"));
            EXPECT_THAT(refused.errors, HasSubstr("--weather-from FOLDER"));
        }
        const auto asked =
            candlemark({"sun", path, "--weather-from", (folder / "weather").string()});
        EXPECT_EQ(asked.status, 0) << named << asked.errors;
        EXPECT_THAT(asked.output, HasSubstr("Made Up Field"));
        const auto other = candlemark({"sun", path, "--weather-from", (folder / "plan").string()});
        EXPECT_EQ(other.status, 2);
    }
    std::ofstream(path) << on_a_weather_file("station.epw");
    EXPECT_THAT(candlemark({"sun", path}).errors, HasSubstr("there is no file \"station.epw\""));
    const auto found = candlemark({"sun", path, "--weather-from", (folder / "plan").string(),
                                   "--weather-from", (folder / "weather" / "below").string()});
    EXPECT_EQ(found.status, 0) << found.errors;
    const auto none = candlemark({"sun", path, "--weather-from", "no/such"});
    EXPECT_EQ(none.status, 2);
    EXPECT_THAT(none.errors, HasSubstr("--weather-from: there is no folder \"no/such\""));
}

}  // namespace
