#include <algorithm>
#include <filesystem>

#include "process.hpp"
#include <nlohmann/json.hpp>

namespace {

using process::candlemark;
using process::file_with;
using testing::HasSubstr;
using testing::Not;

const std::string demo = std::string(CANDLEMARK_SOURCE_DIR) + "/scenarios/ice_storm.toml";

// A lamp of 5 W for six hours on a full pack of 1.28 kWh: nothing can stand in the way.
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

std::string with(std::string text, std::string_view old_words, std::string_view new_words) {
    return text.replace(text.find(old_words), old_words.size(), new_words);
}

TEST(candlemark_outage, answers_a_plain_case_with_status_0_and_no_errors) {
    const auto ended = candlemark({"outage", file_with(lamp, "lamp.toml")});
    EXPECT_EQ(ended.status, 0) << ended.errors;
    EXPECT_THAT(ended.output, HasSubstr("Lasts to the end"));
    EXPECT_EQ(ended.errors, "");
}

TEST(candlemark_outage, a_life_and_health_load_that_goes_without_gives_status_1) {
    const auto text =
        with(with(lamp, "\"5 W\"", "\"900 W\""), "priority = 3", "priority = 1\nmedical = true");
    const auto ended = candlemark({"outage", file_with(text, "medical.toml")});
    EXPECT_EQ(ended.status, 1) << ended.errors;
    EXPECT_THAT(ended.output, HasSubstr("STOP"));
}

TEST(candlemark_outage, reads_standard_input) {
    EXPECT_EQ(candlemark({"outage", "-"}, lamp).status, 0);
    EXPECT_EQ(candlemark({"outage", "-"}, lamp).output,
              candlemark({"outage", file_with(lamp, "lamp.toml")}).output);
}

TEST(candlemark_outage, a_wrong_unit_gives_status_2_and_names_file_line_key_and_remedy) {
    const auto path = file_with(with(lamp, "\"100 Ah\"", "\"100 Wh\""), "wrong.toml");
    const auto ended = candlemark({"outage", path});
    EXPECT_EQ(ended.status, 2);
    EXPECT_EQ(ended.output, "");
    EXPECT_THAT(ended.errors, HasSubstr(path + ":9: "));
    EXPECT_THAT(ended.errors, HasSubstr("capacity"));
    EXPECT_THAT(ended.errors, HasSubstr("100 Wh"));
    EXPECT_THAT(ended.errors, HasSubstr("give"));
}

TEST(candlemark_outage, every_error_of_a_file_is_told_at_once) {
    const auto text = with(with(lamp, "\"100 Ah\"", "\"100 Wh\""), "\"5 W\"", "\"5 A\"");
    const auto ended = candlemark({"outage", file_with(text, "wrong_twice.toml")});
    EXPECT_THAT(ended.errors, HasSubstr(":9: "));
    EXPECT_THAT(ended.errors, HasSubstr(":14: "));
}

TEST(candlemark_outage, what_is_no_file_gives_status_2) {
    const auto folder = std::filesystem::temp_directory_path().string();
    for (const auto& path : {std::string("no_such_file.toml"), folder, std::string("")}) {
        const auto ended = candlemark({"outage", path});
        EXPECT_EQ(ended.status, 2) << path;
        EXPECT_NE(ended.errors, "");
        EXPECT_EQ(ended.output, "");
    }
    EXPECT_EQ(candlemark({"outage", "-"}, "").status, 2);
    EXPECT_EQ(candlemark({"outage", "-"}, "not [ a scenario").status, 2);
}

TEST(candlemark_outage, arguments_that_cannot_be_used_give_status_2_and_point_to_help) {
    for (const std::vector<std::string>& wrong :
         std::vector<std::vector<std::string>>{{"outage"},
                                               {"outage", demo, "--as", "yaml"},
                                               {"outage", demo, "--color"},
                                               {"burn", demo}}) {
        const auto ended = candlemark(wrong);
        EXPECT_EQ(ended.status, 2);
        EXPECT_EQ(ended.output, "");
        EXPECT_THAT(ended.errors, HasSubstr("--help"));
    }
    EXPECT_EQ(candlemark({}).status, 2);
    EXPECT_EQ(candlemark({"--help"}).status, 0);
    EXPECT_EQ(candlemark({"outage", "--help"}).status, 0);
    EXPECT_THAT(candlemark({"--version"}).output, testing::StartsWith("candlemark "));
}

TEST(candlemark_outage, a_set_value_takes_the_place_of_the_files) {
    const auto path = file_with(lamp, "lamp.toml");
    const auto ended =
        candlemark({"outage", path, "--set", "load.lamp.power=300 W", "--as", "json"});
    EXPECT_EQ(ended.status, 0) << ended.errors;
    const auto answer = nlohmann::json::parse(ended.output).at("answer");
    EXPECT_FALSE(answer.at("survives").get<bool>());
    EXPECT_LT(answer.at("lasts").at("value").get<double>(), 1280.0 / 300.0 + 0.2);
    EXPECT_EQ(candlemark({"outage", path, "--set", "load.lamp.power=300 Wh"}).status, 2);
    EXPECT_EQ(candlemark({"outage", path, "--set", "nonsense"}).status, 2);
}

TEST(candlemark_outage, json_of_the_demo_parses_and_its_account_closes) {
    const auto ended = candlemark({"outage", demo, "--as", "json"});
    ASSERT_LE(ended.status, 1) << ended.errors;
    const auto energy = nlohmann::json::parse(ended.output).at("answer").at("energy");
    const auto value = [&](const char* key) { return energy.at(key).at("value").get<double>(); };
    const double in = value("stored_at_start") + value("sun_offered");
    const double out = value("loads") + value("inverter_loss") + value("converter_loss") +
                       value("wiring_loss") + value("battery_loss") + value("sun_unused") +
                       value("stored_at_end");
    EXPECT_NEAR(in, out, 1e-7 * in);
}

TEST(candlemark_outage, csv_of_the_demo_has_a_line_an_hour_of_equal_fields) {
    const auto ended = candlemark({"outage", demo, "--as", "csv"});
    ASSERT_LE(ended.status, 1) << ended.errors;
    EXPECT_EQ(std::ranges::count(ended.output, '\n'), 97);
    EXPECT_THAT(ended.output.substr(0, ended.output.find('\n')),
                HasSubstr("stored at the end [W.h]"));
}

TEST(candlemark_outage, the_locale_decides_about_ascii_and_never_about_numbers) {
    const auto is_ascii = [](const std::string& text) {
        return std::ranges::all_of(text, [](unsigned char letter) { return letter < 0x80; });
    };
    EXPECT_TRUE(is_ascii(candlemark({"outage", demo}, "", {{"LC_ALL", "C"}}).output));
    EXPECT_FALSE(is_ascii(candlemark({"outage", demo}, "", {{"LC_ALL", "C.UTF-8"}}).output));
    EXPECT_TRUE(
        is_ascii(candlemark({"outage", demo, "--ascii"}, "", {{"LC_ALL", "C.UTF-8"}}).output));
    EXPECT_EQ(candlemark({"outage", demo, "--as", "csv", "--language", "en"}, "",
                         {{"LC_ALL", "de_DE.UTF-8"}})
                  .output,
              candlemark({"outage", demo, "--as", "csv"}).output);
}

TEST(candlemark_outage, there_is_no_colour_in_a_file) {
    EXPECT_THAT(candlemark({"outage", demo}, "", {{"TERM", "xterm"}}).output,
                Not(HasSubstr("\x1b")));
}

TEST(candlemark_outage, the_same_question_has_the_same_answer) {
    EXPECT_EQ(candlemark({"outage", demo, "--as", "json"}).output,
              candlemark({"outage", demo, "--as", "json"}).output);
}

}  // namespace
