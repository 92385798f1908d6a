#include "answered.hpp"
#include "typed.hpp"

namespace {

using nlohmann::json;
using testing::HasSubstr;
using testing::IsEmpty;
using typed::candlemark;

const std::string demo = std::string(CANDLEMARK_SOURCE_DIR) + "/scenarios/ice_storm.toml";

json answer_on(const std::string& day, const std::vector<std::string>& more = {}) {
    std::vector<std::string> asked{"storage", demo, "--on", day, "--as", "json"};
    asked.insert(asked.end(), more.begin(), more.end());
    const auto ended = candlemark(asked);
    EXPECT_THAT(ended.errors, IsEmpty());
    return json::parse(ended.output)["answer"];
}

TEST(candlemark_storage, tells_what_is_left_on_the_day_of_the_outage_and_when_to_top_up) {
    const auto ended = candlemark({"storage", demo});
    EXPECT_EQ(ended.status, 0) << ended.errors;
    EXPECT_THAT(ended.errors, IsEmpty());
    EXPECT_THAT(ended.output, HasSubstr("Ready on 14 January 2026"));
    EXPECT_THAT(ended.output, HasSubstr("Top it up by"));
    EXPECT_THAT(ended.output, HasSubstr("With the master switch open"));
    EXPECT_THAT(ended.output, HasSubstr("Month by month"));
}

TEST(candlemark_storage, json_has_the_keys_that_may_be_relied_on) {
    const auto ended = candlemark({"storage", demo, "--as", "json"});
    const auto document = json::parse(ended.output);
    typed::expect_whole(document, "storage");
    const auto& answer = document["answer"];
    typed::expect_keys(answer,
                       {"charge_now", "ready", "top_up_by", "drain_share", "self_discharge_share"});
    EXPECT_EQ(answer["on"], "2026-01-14");
    EXPECT_EQ(answer["charge_now"]["unit"], "%");
    EXPECT_NEAR(answer["drain_share"]["value"].get<double>() +
                    answer["self_discharge_share"]["value"].get<double>(),
                100.0, 1e-6);
    EXPECT_GT(answer["charge_switch_open"]["value"], answer["charge_now"]["value"]);
}

TEST(candlemark_storage, a_later_day_leaves_less_until_it_is_not_ready) {
    double before = 100.0;
    for (const char* day : {"2025-12-01", "2026-06-01", "2027-06-01", "2032-06-01"}) {
        const auto answer = answer_on(day);
        typed::expect_sound(answer);
        const double left = answer["charge_now"]["value"].get<double>();
        EXPECT_LT(left, before) << day;
        before = left;
    }
    EXPECT_TRUE(answer_on("2026-01-14")["ready"].get<bool>());
    const auto late = candlemark({"storage", demo, "--on", "2032-06-01"});
    EXPECT_EQ(late.status, 1);
    EXPECT_FALSE(answer_on("2032-06-01")["ready"].get<bool>());
}

TEST(candlemark_storage, a_larger_drain_brings_the_date_forward) {
    const auto usual = answer_on("2026-01-14");
    const auto drained = answer_on("2026-01-14", {"--set", "storage.drain=\"60 mA\""});
    EXPECT_LT(drained["charge_now"]["value"], usual["charge_now"]["value"]);
    EXPECT_GT(drained["drain_share"]["value"], usual["drain_share"]["value"]);
    EXPECT_LT(drained["top_up_by"].get<std::string>(), usual["top_up_by"].get<std::string>());
    EXPECT_EQ(drained["charge_switch_open"], usual["charge_switch_open"]);
}

TEST(candlemark_storage, bad_input_is_told_in_words) {
    const auto no_date = candlemark({"storage", demo, "--on", "yesterday"});
    EXPECT_EQ(no_date.status, 2);
    EXPECT_THAT(no_date.output, IsEmpty());
    EXPECT_THAT(no_date.errors, HasSubstr("'yesterday' is not a date"));
    const auto before = candlemark({"storage", demo, "--on", "2020-01-01"});
    EXPECT_EQ(before.status, 2);
    EXPECT_THAT(before.errors, HasSubstr("before it was put away"));
    const auto missing = candlemark({"storage", demo, "--on"});
    EXPECT_EQ(missing.status, 2);
    EXPECT_THAT(missing.errors, HasSubstr("--on"));
    const auto unit = candlemark({"storage", demo, "--set", "storage.drain=\"15 mV\""});
    EXPECT_EQ(unit.status, 2);
    EXPECT_THAT(unit.errors, HasSubstr("drain"));
}

TEST(candlemark_storage, a_file_that_is_silent_on_storage_is_told_what_to_add) {
    const auto ended = candlemark(
        {"storage", std::string(CANDLEMARK_SOURCE_DIR) + "/scenarios/saw_and_pump.toml"});
    EXPECT_EQ(ended.status, 2);
    EXPECT_THAT(ended.errors, HasSubstr("[storage]"));
}

TEST(candlemark_storage, help_names_its_options) {
    const auto ended = candlemark({"storage", "--help"});
    EXPECT_EQ(ended.status, 0);
    EXPECT_THAT(ended.output, HasSubstr("--on"));
    EXPECT_THAT(ended.output, HasSubstr("top"));
}

}  // namespace
