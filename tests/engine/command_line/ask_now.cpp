#include <fstream>
#include <sstream>

#include "answered.hpp"
#include "typed.hpp"

namespace {

using nlohmann::json;
using testing::HasSubstr;
using typed::candlemark;

const std::string demo = std::string(CANDLEMARK_SOURCE_DIR) + "/scenarios/ice_storm.toml";

std::string demo_with(const std::string& log, const std::string& name) {
    std::ostringstream text;
    text << std::ifstream(demo, std::ios::binary).rdbuf() << "\n" << log;
    return typed::file_with(text.str(), name);
}

constexpr const char* two_readings = R"([[log]]
at = 2026-01-15T06:00:00
shows = "78 %"
[[log]]
at = 2026-01-15T18:00:00
load = "chest freezer"
metered = { energy = "1.15 kWh", over = "24 h" }
)";

TEST(candlemark_now, says_until_when_what_goes_off_and_what_to_read) {
    const auto file = demo_with(two_readings, "now_two.toml");
    const auto ended = candlemark({"now", file, "--at", "2026-01-15T18:30"});
    EXPECT_LT(ended.status, 2) << ended.errors;
    EXPECT_THAT(ended.output, HasSubstr("nine times in ten"));
    EXPECT_THAT(ended.output, HasSubstr("witch off next: "));
    EXPECT_THAT(ended.output, HasSubstr("Before the last reading the end was expected between"));
}

TEST(candlemark_now, json_has_the_keys_that_may_be_relied_on) {
    const auto file = demo_with(two_readings, "now_json.toml");
    const auto ended = candlemark({"now", file, "--at", "2026-01-15T18:30", "--as", "json"});
    EXPECT_LT(ended.status, 2) << ended.errors;
    const auto document = json::parse(ended.output);
    typed::expect_whole(document, "now");
    const auto& answer = document["answer"];
    typed::expect_sound(answer);
    typed::expect_keys(answer, {"over_chances", "count_on", "chance", "was", "limited_by",
                                "next_off", "read_next", "departures", "contradictions"});
    EXPECT_LE(answer["over_chances"]["nine_in_ten"]["lasts"]["value"],
              answer["over_chances"]["half"]["lasts"]["value"]);
    for (const auto& step : answer["next_off"])
        EXPECT_TRUE(step["alone_gains"].is_object());
}

TEST(candlemark_now, an_empty_log_at_the_start_is_the_outage) {
    const auto now = candlemark({"now", demo, "--at", "2026-01-14T18:00", "--as", "json"});
    const auto outage = candlemark({"outage", demo, "--as", "json"});
    const auto one = json::parse(now.output)["answer"];
    const auto other = json::parse(outage.output)["answer"];
    EXPECT_EQ(one["over_chances"]["half"]["lasts"]["value"],
              other["over_chances"]["half"]["value"]);
    EXPECT_EQ(one["over_chances"]["nine_in_ten"]["lasts"]["value"],
              other["over_chances"]["nine_in_ten"]["value"]);
    EXPECT_EQ(one["chance"]["of"]["value"], other["chance"]["of"]["value"]);
}

TEST(candlemark_now, a_moment_outside_of_the_outage_is_refused_in_its_own_words) {
    const auto before = candlemark({"now", demo, "--at", "2026-01-13T18:00"});
    EXPECT_EQ(before.status, 2);
    EXPECT_THAT(before.errors, HasSubstr("before the outage starts"));
    const auto after = candlemark({"now", demo, "--at", "2026-02-13T18:00"});
    EXPECT_EQ(after.status, 2);
    EXPECT_THAT(after.errors, HasSubstr("after the outage is over"));
    const auto by_the_clock = candlemark({"now", demo});
    EXPECT_EQ(by_the_clock.status, 2);
    EXPECT_THAT(by_the_clock.errors, HasSubstr("this computer's clock says"));
}

// The clock of the tests says noon of 1 June.
TEST(candlemark_now, a_clock_that_is_wrong_is_put_right_by_the_file) {
    const auto file = demo_with("[clock]\nahead_by = \"3281.5 h\"\n" + std::string(two_readings),
                                "now_clock.toml");
    const auto right = candlemark({"now", file, "--as", "json"});
    EXPECT_LT(right.status, 2) << right.errors;
    EXPECT_EQ(json::parse(right.output)["answer"]["now"], "2026-01-15T18:30:00");
    const auto noted = candlemark({"note", file, "lamps off"});
    EXPECT_LT(noted.status, 2) << noted.errors;
    EXPECT_THAT(noted.output, HasSubstr("18:30"));
}

TEST(candlemark_now, what_is_first_written_down_as_switched_on_is_told_to_count_as_off_before) {
    const auto file = demo_with(
        "[[log]]\nat = 2026-01-15T06:00:00\nload = \"lamps\"\nhappened = \"switched on\"\n"
        "[[log]]\nat = 2026-01-15T07:00:00\nload = \"phones\"\nhappened = \"switched off\"\n"
        "[[log]]\nat = 2026-01-15T08:00:00\nload = \"phones\"\nhappened = \"switched on\"\n",
        "now_on.toml");
    const auto ended = candlemark({"now", file, "--at", "2026-01-15T08:30", "--full"});
    EXPECT_THAT(ended.output, HasSubstr("load lamps"));
    EXPECT_THAT(ended.output, HasSubstr("switched on, Thursday 06:00"));
    EXPECT_EQ(ended.output.find("load phones"), std::string::npos);
}

TEST(candlemark_now, who_relies_on_a_machine_is_told_the_hour_by_which_to_act) {
    const auto file = demo_with(
        "[[load]]\nname = \"concentrator\"\npower = \"300 W\"\nmedical = "
        "true\npriority = 1\n",
        "now_medical.toml");
    const auto ended = candlemark({"now", file, "--at", "2026-01-14T20:00"});
    EXPECT_THAT(ended.output, HasSubstr("act by"));
    EXPECT_EQ(ended.output.find("Switch off next: concentrator"), std::string::npos);
}

TEST(candlemark_now, a_supply_that_is_back_ends_it) {
    const auto file = demo_with("[[log]]\nat = 2026-01-15T06:00:00\nhappened = \"supply back\"\n",
                                "now_back.toml");
    const auto ended = candlemark({"now", file, "--at", "2026-01-15T07:00", "--full"});
    EXPECT_THAT(ended.output, HasSubstr("The supply came back on Thursday 06:00"));
    EXPECT_THAT(ended.output, HasSubstr("never join this unit to the house"));
}

}  // namespace
