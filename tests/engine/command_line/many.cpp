// Many files in one call: a line of JSON each, whatever becomes of one, and going on after an end.
#include <cstdio>
#include <fstream>
#include <gmock/gmock.h>
#include <sstream>

#include "typed.hpp"
#include <gtest/gtest.h>
#include <nlohmann/json.hpp>

namespace {

using nlohmann::json;
using testing::HasSubstr;
using testing::Not;
using typed::candlemark;
using typed::file_with;

const std::string demo = std::string(CANDLEMARK_SOURCE_DIR) + "/scenarios/ice_storm.toml";

std::string household(int number) {
    return file_with(
        "format = 1\n[outage]\nstarts = 2026-07-01T18:00:00\nlasts = \"" +
            std::to_string(5 + number) +
            " h\"\n[[pack]]\nname = \"main\"\nchemistry = \"lifepo4\"\ncapacity = \"100 Ah\"\n"
            "voltage = \"12.8 V\"\n[[load]]\nname = \"lamp\"\nfrom = \"12V\"\npower = \"10 W\"\n",
        "household_" + std::to_string(number) + ".toml");
}

std::vector<json> lines_of(const std::string& text) {
    std::vector<json> lines;
    std::istringstream stream(text);
    for (std::string line; std::getline(stream, line);)
        lines.push_back(json::parse(line));
    return lines;
}

TEST(candlemark_many, give_a_line_each_that_says_what_it_was_made_from) {
    const auto bad = file_with("format = 1\n[[pack]]\nname = \"a\"\n", "household_bad.toml");
    const auto ended = candlemark({"outage", household(1), bad, household(2), "--as", "jsonl",
                                   "--members", "0", "--seed", "7"});
    EXPECT_EQ(ended.status, 2);
    EXPECT_EQ(ended.errors, "candlemark: 2 answered; 1 could not be used\n");
    const auto lines = lines_of(ended.output);
    ASSERT_EQ(lines.size(), 3U);
    for (const auto& line : lines) {
        EXPECT_EQ(line["candlemark"], 1);
        EXPECT_EQ(line["question"], "outage");
        EXPECT_EQ(line["made_by"]["seed"], 7);
        EXPECT_EQ(line["made_by"]["arguments"],
                  (json{"outage", line["file"], "--as", "jsonl", "--members", "0", "--seed", "7"}));
        EXPECT_EQ(line["made_by"]["files"][0]["sha256"].get<std::string>().size(), 64U);
        EXPECT_TRUE(line["warnings"].is_array());
        EXPECT_EQ(line["answer"].is_null(), !line["errors"].empty());
    }
    EXPECT_FALSE(lines[1]["errors"].empty());
    EXPECT_EQ(lines[2]["file"], household(2));
}

TEST(candlemark_many, end_with_nought_though_one_holds_a_stop) {
    const auto ended = candlemark({"outage", household(1), household(2), "--members", "0", "--set",
                                   "pack.main.charge=\"1 %\"", "--quiet"});
    EXPECT_EQ(ended.status, 0) << ended.errors;
    EXPECT_EQ(ended.errors, "");
    EXPECT_EQ(lines_of(ended.output).size(), 2U);
}

TEST(candlemark_many, one_file_is_a_line_too_where_lines_are_asked_for) {
    const auto ended = candlemark({"read", household(1), "--as", "jsonl"});
    EXPECT_EQ(ended.status, 0);
    EXPECT_EQ(lines_of(ended.output).size(), 1U);
}

TEST(candlemark_many, are_named_by_a_list_or_by_standard_input) {
    const auto list = household(1) + "\n\n" + household(2) + "\r\n" + household(3);
    const auto by_input = candlemark({"outage", "--files-from", "-", "--members", "0"}, list);
    const auto by_file =
        candlemark({"outage", "--files-from", file_with(list, "households.txt"), "--members", "0"});
    EXPECT_EQ(lines_of(by_input.output).size(), 3U) << by_input.errors;
    EXPECT_EQ(by_input.output, by_file.output);
    const auto none =
        candlemark({"outage", "--files-from", file_with("\n", "households_none.txt")});
    EXPECT_EQ(none.status, 2);
    EXPECT_THAT(none.errors, HasSubstr("found no name of a file"));
}

TEST(candlemark_many, go_on_behind_the_last_whole_line) {
    const std::vector<std::string> files{household(1), household(2), household(3)};
    const auto ask = [&](const std::string& lines) {
        return candlemark({"outage", files[0], files[1], files[2], "--as", "jsonl", "--members",
                           "0", "--resume", file_with(lines, "lines.jsonl")});
    };
    const auto all = ask("");
    const auto first = all.output.substr(0, all.output.find('\n') + 1);
    const auto rest = ask(first + R"({"file":"half a li)");
    EXPECT_EQ(first + rest.output, all.output);
    EXPECT_EQ(rest.errors, "candlemark: 2 answered; 1 was there already\n");
    EXPECT_EQ(ask(all.output).output, "");
}

TEST(candlemark_many, are_asked_anew_where_the_file_or_the_question_is_another) {
    const auto file = household(4);
    const auto ask = [&](const std::string& lines, const std::string& seed) {
        return candlemark({"outage", file, "--as", "jsonl", "--members", "0", "--seed", seed,
                           "--resume", file_with(lines, "lines_of_one.jsonl")});
    };
    const auto before = ask("", "1").output;
    EXPECT_EQ(ask(before, "1").output, "");
    EXPECT_NE(ask(before, "2").output, "");
    std::ofstream(file, std::ios::app) << "# another lamp comes soon\n";
    EXPECT_NE(ask(before, "1").output, "");
}

TEST(candlemark_many, refuse_the_faces_that_are_no_lines) {
    for (const std::string face : {"text", "json", "csv", "html", "svg"}) {
        const auto ended = candlemark({"outage", demo, demo, "--as", face});
        EXPECT_EQ(ended.status, 2) << face;
        EXPECT_EQ(ended.output, "") << face;
        EXPECT_THAT(ended.errors, HasSubstr("--as jsonl")) << face;
    }
    EXPECT_EQ(candlemark({"outage", demo, "--resume", "x"}).status, 2);
    EXPECT_EQ(candlemark({"outage", demo, "--files-from", "x"}).status, 2);
    EXPECT_EQ(candlemark({"outage"}).status, 2);
}

}  // namespace
