#include <fstream>
#include <sstream>

#include "answered.hpp"
#include "typed.hpp"

namespace {

using nlohmann::json;
using testing::HasSubstr;
using typed::candlemark;
using typed::contents;

const std::string demo = std::string(CANDLEMARK_SOURCE_DIR) + "/scenarios/ice_storm.toml";

// The demo with a meter on the blower, whose draw it only guesses.
std::string metered(const std::string& name) {
    return typed::file_with(contents(demo) + R"(
[[log]]
at = 2026-01-15T18:00:00
load = "furnace blower"
metered = { energy = "1.5 kWh", over = "24 h" }
)",
                            name);
}

TEST(candlemark_learnt, offers_values_with_what_stands_in_the_file) {
    const auto file = metered("learnt_offers.toml");
    const auto before = contents(file);
    const auto ended = candlemark({"learnt", file, "--as", "json"});
    EXPECT_LT(ended.status, 2) << ended.errors;
    const auto document = json::parse(ended.output);
    typed::expect_whole(document, "learnt");
    const auto& answer = document["answer"];
    typed::expect_sound(answer);
    typed::expect_keys(answer, {"values", "energy"});
    bool of_the_blower = false;
    for (const auto& value : answer["values"]) {
        typed::expect_keys(value, {"key", "in_file", "learnt", "from"});
        of_the_blower =
            of_the_blower || value["key"].get<std::string>().starts_with("load.furnace blower.");
    }
    EXPECT_TRUE(of_the_blower) << ended.output;
    EXPECT_EQ(contents(file), before);
}

TEST(candlemark_learnt, takes_one_value_and_says_where_it_came_from) {
    const auto file = metered("learnt_takes.toml");
    const auto before = contents(file);
    const auto ended = candlemark({"learnt", file, "--take", "furnace blower"});
    EXPECT_LT(ended.status, 2) << ended.errors;
    EXPECT_THAT(ended.output, HasSubstr("Written into the file: load.furnace blower."));
    const auto after = contents(file);
    EXPECT_NE(after, before);
    EXPECT_THAT(after, HasSubstr("# learnt in the outage of 14 January 2026, 1 reading"));
    EXPECT_LT(candlemark({"outage", file}).status, 2);
}

TEST(candlemark_learnt, writes_nothing_where_nothing_of_that_name_is_offered) {
    const auto file = metered("learnt_nothing.toml");
    const auto before = contents(file);
    const auto ended = candlemark({"learnt", file, "--take", "toaster"});
    EXPECT_EQ(ended.status, 2);
    EXPECT_THAT(ended.errors, HasSubstr("toaster"));
    EXPECT_EQ(contents(file), before);
}

TEST(candlemark_learnt, an_empty_log_teaches_nothing) {
    const auto ended = candlemark({"learnt", demo});
    EXPECT_EQ(ended.status, 2);
    EXPECT_THAT(ended.errors, HasSubstr("nothing was written down"));
}

}  // namespace
