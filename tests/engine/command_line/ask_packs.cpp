#include <sstream>

#include "typed.hpp"
#include <nlohmann/json.hpp>

namespace {

using nlohmann::json;
using testing::HasSubstr;
using typed::candlemark;
using typed::file_with;

const std::string demo = std::string(CANDLEMARK_SOURCE_DIR) + "/scenarios/ice_storm.toml";

TEST(candlemark_packs, names_the_build_its_chance_and_its_neighbour) {
    const auto ended = candlemark({"packs", demo});
    EXPECT_EQ(ended.status, 0) << ended.errors;
    EXPECT_THAT(ended.output,
                HasSubstr("packs with the one in the case) and three\npanels: lasts to the end"));
    EXPECT_THAT(ended.output, HasSubstr("times in ten"));
    EXPECT_THAT(ended.output, HasSubstr("Times in 100 that it lasts to the end"));
    EXPECT_THAT(ended.output, HasSubstr("What matters most"));
}

TEST(candlemark_packs, json_holds_a_grid_whose_chances_never_fall_with_packs_or_panels) {
    const auto ended = candlemark({"packs", demo, "--as", "json", "--weathers", "128",
                                   "--most-packs", "9", "--most-panels", "5"});
    const auto answer = json::parse(ended.output)["answer"];
    ASSERT_EQ(answer["grid"].size(), 9U * 6U);
    const auto at = [&](std::size_t pack, std::size_t panel) {
        return answer["grid"][pack * 6 + panel];
    };
    for (std::size_t pack = 0; pack < 9; ++pack)
        for (std::size_t panel = 0; panel < 6; ++panel) {
            const auto cell = at(pack, panel);
            EXPECT_EQ(cell["packs"], pack + 1);
            EXPECT_EQ(cell["panels"], panel);
            EXPECT_LE(cell["chance_low"]["value"], cell["chance"]["value"]);
            EXPECT_GE(cell["chance_high"]["value"], cell["chance"]["value"]);
            if (pack > 0) {
                EXPECT_GE(cell["chance"]["value"], at(pack - 1, panel)["chance"]["value"]);
            }
            if (panel > 0) {
                EXPECT_GE(cell["chance"]["value"], at(pack, panel - 1)["chance"]["value"]);
            }
        }
}

TEST(candlemark_packs, says_when_nothing_is_feasible_and_what_would_be) {
    const auto ended =
        candlemark({"packs", demo, "--most-packs", "3", "--most-panels", "3", "--weathers", "100"});
    EXPECT_EQ(ended.status, 1);
    EXPECT_THAT(ended.output, HasSubstr("Not feasible"));
    EXPECT_THAT(ended.output, HasSubstr("nine times in ten"));
    EXPECT_THAT(ended.output, HasSubstr("Without modem and router"));
    EXPECT_THAT(ended.output, HasSubstr("STOP"));
}

TEST(candlemark_packs, a_missing_price_is_unknown_and_never_nought) {
    const auto ended =
        candlemark({"packs", std::string(CANDLEMARK_SOURCE_DIR) + "/scenarios/summer_storm.toml",
                    "--as", "json", "--weathers", "100"});
    const auto answer = json::parse(ended.output)["answer"];
    EXPECT_TRUE(answer["price"].is_null());
    EXPECT_THAT(answer["why_null"]["price"].get<std::string>(), HasSubstr("no price"));
    EXPECT_TRUE(answer["cheapest"].is_null());
}

TEST(candlemark_packs, many_files_give_a_line_of_json_each_whatever_becomes_of_one) {
    const auto broken = file_with("format = 1\ntitle = \"No pack\"\n", "no_pack.toml");
    const auto ended = candlemark({"packs", demo, broken, demo, "--weathers", "64"});
    EXPECT_EQ(ended.status, 2);
    std::vector<json> lines;
    std::istringstream text(ended.output);
    for (std::string line; std::getline(text, line);)
        lines.push_back(json::parse(line));
    ASSERT_EQ(lines.size(), 3U);
    EXPECT_EQ(lines[0]["file"], demo);
    EXPECT_EQ(lines[0]["question"], "packs");
    EXPECT_EQ(lines[0]["answer"], lines[2]["answer"]);
    EXPECT_EQ(lines[1]["file"], broken);
    ASSERT_FALSE(lines[1]["errors"].empty());
    EXPECT_FALSE(lines[1]["errors"][0]["remedy"].get<std::string>().empty());
}

TEST(candlemark_packs, what_may_be_spent_bounds_every_build_named) {
    const auto ended = candlemark({"packs", demo, "--set", "goal.spend_at_most=\"4200\"", "--as",
                                   "json", "--weathers", "200"});
    const auto answer = json::parse(ended.output)["answer"];
    EXPECT_TRUE(answer["feasible"].get<bool>());
    EXPECT_LE(answer["cheapest"]["price"]["value"].get<double>(), 4200.0);
    EXPECT_LE(answer["lightest"]["price"]["value"].get<double>(), 4200.0);
    const auto short_of_money =
        candlemark({"packs", demo, "--set", "goal.spend_at_most=\"2000\"", "--weathers", "200"});
    EXPECT_EQ(short_of_money.status, 1);
    EXPECT_THAT(short_of_money.output, HasSubstr("for at most 2000"));
}

TEST(candlemark_packs, threads_change_nothing) {
    const auto one = candlemark({"packs", demo, "--threads", "1", "--weathers", "200"});
    const auto three = candlemark({"packs", demo, "--threads", "3", "--weathers", "200"});
    EXPECT_EQ(one.output, three.output);
}

TEST(candlemark_packs, bad_options_are_told_in_words) {
    EXPECT_EQ(candlemark({"packs", demo, "--most-packs", "0"}).status, 2);
    const auto ended = candlemark({"packs", demo, "--weathers", "many"});
    EXPECT_EQ(ended.status, 2);
    EXPECT_THAT(ended.errors, HasSubstr("--members"));
    EXPECT_THAT(candlemark({"packs", "--help"}).output, HasSubstr("--most-panels"));
}

}  // namespace
