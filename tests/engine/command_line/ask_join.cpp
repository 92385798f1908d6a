#include "answered.hpp"
#include "typed.hpp"

namespace {

using nlohmann::json;
using testing::HasSubstr;
using testing::IsEmpty;
using typed::candlemark;

const std::string demo = std::string(CANDLEMARK_SOURCE_DIR) + "/scenarios/ice_storm.toml";
const std::string a_fifth_full = "pack.expansion.charge=\"20 %\"";

TEST(candlemark_join, full_packs_of_one_kind_are_level) {
    const auto ended = candlemark({"join", demo});
    EXPECT_EQ(ended.status, 0) << ended.errors;
    EXPECT_THAT(ended.errors, IsEmpty());
    EXPECT_THAT(ended.output, HasSubstr("Nothing was found against plugging expansion onto main"));
    EXPECT_THAT(ended.output, HasSubstr("next to nothing will flow"));
    EXPECT_THAT(ended.output, HasSubstr("Arithmetic, not approval."));
}

TEST(candlemark_join, an_emptier_pack_is_charged_by_the_unit) {
    const auto ended = candlemark({"join", demo, "--set", a_fifth_full});
    EXPECT_EQ(ended.status, 0) << ended.errors;
    EXPECT_THAT(ended.output, HasSubstr("will flow from main and "));
    EXPECT_THAT(ended.output, HasSubstr("The current falls as the voltages meet"));
}

TEST(candlemark_join, a_current_not_to_be_exceeded_is_held_against_it) {
    const auto ended = candlemark({"join", demo, "--set", a_fifth_full, "--at-most", "3 A"});
    EXPECT_EQ(ended.status, 1);
    EXPECT_THAT(ended.output, HasSubstr("Do not plug expansion onto main"));
    EXPECT_THAT(ended.output, HasSubstr("you asked for 3 A at most"));
    EXPECT_THAT(ended.output, HasSubstr("STOP"));
}

TEST(candlemark_join, json_has_the_keys_that_may_be_relied_on) {
    const auto ended = candlemark({"join", demo, "--set", a_fifth_full, "--as", "json"});
    const auto document = json::parse(ended.output);
    typed::expect_whole(document, "join");
    const auto& answer = document["answer"];
    typed::expect_keys(
        answer, {"current", "direction", "allowed", "largest_voltage_difference", "settles_in"});
    EXPECT_EQ(answer["direction"], "unit_charges_pack");
    EXPECT_TRUE(answer["allowed"].get<bool>());
    EXPECT_EQ(answer["current"]["unit"], "A");
    EXPECT_GT(answer["current"]["value"].get<double>(), 1.0);
    EXPECT_EQ(answer["largest_voltage_difference"]["unit"], "V");
    EXPECT_EQ(answer["settles_in"]["unit"], "h");
    // the one that is charged is the lower one
    EXPECT_LT(answer["pack_voltage"]["value"], answer["unit_voltage"]["value"]);
}

TEST(candlemark_join, below_freezing_lithium_is_not_charged_by_another) {
    const auto ended = candlemark({"join", demo, "--set", a_fifth_full, "--set",
                                   "outage.battery_temperature=\"-5 degC\"", "--as", "json"});
    EXPECT_EQ(ended.status, 1);
    const auto document = json::parse(ended.output);
    EXPECT_FALSE(document["answer"]["allowed"].get<bool>());
    EXPECT_EQ(document["answer"]["largest_voltage_difference"]["value"], 0.0);
    typed::expect_sound(document["answer"]);
}

TEST(candlemark_join, bad_input_is_told_in_words) {
    const auto unknown = candlemark({"join", demo, "--pack", "nobody"});
    EXPECT_EQ(unknown.status, 2);
    EXPECT_THAT(unknown.output, IsEmpty());
    EXPECT_THAT(unknown.errors, HasSubstr("no pack named nobody"));
    const auto volts = candlemark({"join", demo, "--at-most", "20 V"});
    EXPECT_EQ(volts.status, 2);
    EXPECT_THAT(volts.errors, HasSubstr("found 20 V, which is voltage; give current"));
    const auto backwards = candlemark({"join", demo, "--at-most", "-3 A"});
    EXPECT_EQ(backwards.status, 2);
    EXPECT_THAT(backwards.errors, HasSubstr("not above zero"));
    const auto missing = candlemark({"join", demo, "--pack"});
    EXPECT_EQ(missing.status, 2);
    EXPECT_THAT(missing.errors, HasSubstr("--pack"));
    EXPECT_EQ(candlemark({"join"}).status, 2);
}

TEST(candlemark_join, a_pack_cannot_join_a_unit_of_which_it_is_the_whole) {
    const auto file = typed::file_with(
        "format = 1\ntitle = \"One\"\n[outage]\n"
        "starts = 2026-01-14T18:00:00\nlasts = \"1 d\"\n"
        "[place]\nname = \"Chicago IL\"\n[[pack]]\n"
        "name = \"only\"\nchemistry = \"agm\"\n"
        "capacity = \"100 Ah\"\ncharge = \"100 %\"\n",
        "one_pack.toml");
    const auto ended = candlemark({"join", file});
    EXPECT_EQ(ended.status, 2);
    EXPECT_THAT(ended.errors, HasSubstr("pack"));
}

TEST(candlemark_join, help_names_its_options) {
    const auto ended = candlemark({"join", "--help"});
    EXPECT_EQ(ended.status, 0);
    EXPECT_THAT(ended.output, HasSubstr("--pack NAME"));
    EXPECT_THAT(ended.output, HasSubstr("--at-most"));
}

}  // namespace
