// An answer that is kept says what it was made from.
#include "command_line/made_by.hpp"

#include <filesystem>
#include <fstream>
#include <gmock/gmock.h>
#include <unistd.h>

#include <gtest/gtest.h>
#include <nlohmann/json.hpp>

#include "command_line/run.hpp"
#include "support/weather_text.hpp"

namespace {

using command_line::sha256_of;
using nlohmann::json;
using testing::ElementsAre;

TEST(made_by, digests_are_those_of_sha256sum) {
    // [FIPS 180-4], its examples; printf abc | sha256sum says the same.
    EXPECT_EQ(sha256_of("abc"), "ba7816bf8f01cfea414140de5dae2223b00361a396177a9cb410ff61f20015ad");
    EXPECT_EQ(sha256_of(""), "e3b0c44298fc1c149afbf4c8996fb92427ae41e4649b934ca495991b7852b855");
}

constexpr std::string_view lamp = R"toml(format = 1
[outage]
starts = 2026-01-14T18:00:00
lasts = "1 d"
[[pack]]
name = "main"
chemistry = "lifepo4"
capacity = "100 Ah"
[[load]]
name = "lamp"
from = "12V"
power = "9 W"
)toml";

class Files : public testing::Test {
  protected:
    void SetUp() override { std::filesystem::create_directories(folder_); }
    void TearDown() override { std::filesystem::remove_all(folder_); }

    std::string file(const std::string& name, std::string_view text) {
        std::ofstream(folder_ / name) << text;
        return (folder_ / name).string();
    }

  private:
    std::filesystem::path folder_ =
        std::filesystem::temp_directory_path() / ("candlemark_made_by_" + std::to_string(getpid()));
};

json made_by_of(const std::string& text) {
    return json::parse(text).at("made_by");
}

TEST_F(Files, an_answer_names_program_arguments_seed_and_content) {
    const auto path = file("lamp.toml", lamp);
    const std::vector<std::string> arguments = {
        "outage", path,  "--seed", "18446744073709551615", "--set", "pack.main.count=2",
        "--as",   "json"};
    const auto made = made_by_of(command_line::run(arguments, {}).output);
    EXPECT_EQ(made.at("program"), "candlemark");
    const auto version = command_line::run({"--version"}, {}).output;
    EXPECT_EQ("candlemark " + made.at("version").get<std::string>() + "\n", version);
    EXPECT_EQ(made.at("arguments").get<std::vector<std::string>>(), arguments);
    EXPECT_EQ(made.at("seed").get<std::uint64_t>(), 18446744073709551615U);
    ASSERT_EQ(made.at("files").size(), 1U);
    EXPECT_EQ(made["files"][0].at("file"), path);
    // The bytes as they lie there, whatever --set changed.
    EXPECT_EQ(made["files"][0].at("sha256"), sha256_of(lamp));
}

TEST_F(Files, who_asks_again_with_the_arguments_gets_the_same_answer) {
    const auto path = file("lamp.toml", lamp);
    const auto first = command_line::run({"outage", path, "--as", "json"}, {}).output;
    const auto arguments = made_by_of(first).at("arguments").get<std::vector<std::string>>();
    EXPECT_EQ(command_line::run(arguments, {}).output, first);
}

TEST_F(Files, one_changed_letter_is_seen) {
    const auto path = file("lamp.toml", lamp);
    const auto ask = [&] { return command_line::run({"outage", path, "--as", "json"}, {}).output; };
    const auto before = made_by_of(ask());
    file("lamp.toml", std::string(lamp) + "#");
    const auto after = made_by_of(ask());
    EXPECT_NE(before["files"][0]["sha256"], after["files"][0]["sha256"]);
}

TEST_F(Files, a_comparison_names_both_files) {
    const auto old_build = file("old.toml", lamp);
    const auto new_build = file("new.toml", std::string(lamp) + "# new\n");
    const auto made =
        made_by_of(command_line::run({"compare", old_build, new_build, "--as", "json"}, {}).output);
    ASSERT_EQ(made.at("files").size(), 2U);
    EXPECT_EQ(made["files"][1].at("file"), new_build);
    EXPECT_EQ(made["files"][1].at("sha256"), sha256_of(std::string(lamp) + "# new\n"));
}

TEST_F(Files, a_weather_file_is_named_with_its_content) {
    const std::string hours = test_support::epw_text(
        [](int, int) { return test_support::MadeHour{.global = 100.0, .diffuse = 100.0}; });
    file("hours.epw", hours);
    const auto path =
        file("lamp.toml", std::string(lamp) + "[place]\nweather_file = \"hours.epw\"\n");
    const auto made = made_by_of(command_line::run({"read", path, "--as", "json"}, {}).output);
    ASSERT_EQ(made.at("files").size(), 2U);
    EXPECT_EQ(made["files"][1].at("file"), "hours.epw");
    EXPECT_EQ(made["files"][1].at("sha256"), sha256_of(hours));
}

TEST_F(Files, of_many_files_each_line_names_its_own) {
    const auto one = file("one.toml", lamp);
    const auto two = file("two.toml", std::string(lamp) + "# two\n");
    const auto output = command_line::run({"packs", one, two, "--weathers", "2", "--most-packs",
                                           "1", "--most-panels", "0", "--threads", "1"},
                                          {})
                            .output;
    const auto line_end = output.find('\n');
    const auto second = made_by_of(output.substr(line_end + 1));
    EXPECT_THAT(second.at("arguments").get<std::vector<std::string>>(),
                ElementsAre("packs", two, "--weathers", "2", "--most-packs", "1", "--most-panels",
                            "0", "--threads", "1"));
    ASSERT_EQ(second.at("files").size(), 1U);
    EXPECT_EQ(second["files"][0].at("sha256"), sha256_of(std::string(lamp) + "# two\n"));
}

}  // namespace
