// A program that asks for JSON of a file that cannot be used gets the errors in JSON too.
#include "process.hpp"
#include <nlohmann/json.hpp>

namespace {

using process::candlemark;
using process::file_with;
using testing::HasSubstr;

const std::string bad = R"(format = 1
[outage]
starts = 2026-07-01T18:00:00
lasts = "6 h"
[[pack]]
name = "main"
chemistry = "lithium"
capacity = "100 Wh"
voltage = "12.8 V"
colour = "blue"
)";

TEST(candlemark_json_errors, stand_on_standard_output_with_place_found_and_right) {
    const auto file = file_with(bad, "bad.toml");
    const auto ended = candlemark({"outage", file, "--as", "json"});
    EXPECT_EQ(ended.status, 2);
    const auto json = nlohmann::json::parse(ended.output);
    EXPECT_EQ(json["file"], file);
    ASSERT_EQ(json["errors"].size(), 3U) << ended.output;
    EXPECT_EQ(json["errors"][0]["where"], "pack[0].chemistry");
    EXPECT_EQ(json["errors"][0]["line"], 7);
    EXPECT_THAT(json["errors"][0]["remedy"].get<std::string>(), HasSubstr("lifepo4"));
    EXPECT_THAT(json["errors"][1]["found"].get<std::string>(), HasSubstr("100 Wh"));
    EXPECT_EQ(json["errors"][2]["where"], "pack[0].colour");
    EXPECT_THAT(ended.errors, HasSubstr("pack[0].chemistry"));
}

TEST(candlemark_json_errors, of_the_second_stage_too) {
    const auto ended = candlemark({"sun",
                                   file_with("format = 1\n[outage]\nstarts = 2026-07-01\n"
                                             "lasts = \"6 h\"\n[[panel]]\npower = \"100 W\"\n"
                                             "[[pack]]\nname = \"main\"\nchemistry = \"agm\"\n"
                                             "capacity = \"100 Ah\"\nvoltage = \"12 V\"\n",
                                             "no_place.toml"),
                                   "--as", "json"});
    EXPECT_EQ(ended.status, 2);
    EXPECT_FALSE(nlohmann::json::parse(ended.output)["errors"].empty());
}

}  // namespace
