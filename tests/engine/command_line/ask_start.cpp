#include "typed.hpp"
#include <nlohmann/json.hpp>

namespace {

using nlohmann::json;
using testing::HasSubstr;
using typed::candlemark;
using typed::file_with;

// The worked sump pump: 13.0 V rested at this charge, 6 milliohm a pack, 1.5 milliohm shared.
const std::string sump = R"(format = 1
title = "Sump pump in a thunderstorm"
[outage]
starts = 2026-07-01T18:00:00
lasts = "1 d"
battery_temperature = "25 degC"
[[pack]]
name = "main"
chemistry = "lifepo4"
capacity = "100 Ah"
charge = "22.9 %"
resistance = "4 mohm"
lead_resistance = "2 mohm"
pulse = [{current = "200 A", for = "5 s"}]
[inverter]
continuous = "3000 W"
surge = "6000 W"
cutoff_voltage = "10.5 V"
cable_resistance = "1.5 mohm"
[[load]]
name = "sump pump"
power = "600 W"
runs = {on = "3 min", every = "1 h"}
motor = {kind = "split_phase", horsepower = "1/3 hp", code_letter = "M", voltage = "115 V"}
[[load]]
name = "what is on"
power = "210 W"
power_factor = "0.9"
evidence = "metered"
)";

json asked_with(int packs) {
    const auto ended = candlemark({"start", file_with(sump, "sump.toml"), "--as", "json", "--set",
                                   "pack.main.count=" + std::to_string(packs)});
    EXPECT_LE(ended.status, 1) << ended.errors;
    const auto answer = json::parse(ended.output)["answer"];
    EXPECT_EQ(answer["loads"].size(), 1);
    return answer["loads"][0];
}

TEST(candlemark_start, one_pack_will_not_start_the_pump_two_may_and_three_do) {
    const auto one = asked_with(1);
    EXPECT_EQ(one["verdict"], "will_not_start");
    EXPECT_EQ(one["binding"], "pack_current");
    EXPECT_EQ(one["packs_needed"], 3);
    const auto two = asked_with(2);
    EXPECT_EQ(two["verdict"], "marginal");
    EXPECT_EQ(two["binding"], "pack_current");
    EXPECT_GT(two["utilisation"]["pack_current"]["high"]["value"], 1.0);
    const auto three = asked_with(3);
    EXPECT_EQ(three["verdict"], "starts");
    EXPECT_NEAR(three["utilisation"]["pack_current"]["high"]["value"].get<double>(), 0.72, 0.02);
    EXPECT_NEAR(three["utilisation"]["low_voltage"]["high"]["value"].get<double>(), 0.53, 0.02);
}

TEST(candlemark_start, a_pump_that_will_not_start_is_a_stop) {
    const auto ended = candlemark({"start", file_with(sump, "sump_stop.toml")});
    EXPECT_EQ(ended.status, 1) << ended.errors;
    EXPECT_THAT(ended.output, HasSubstr("will not start"));
    EXPECT_THAT(ended.output, HasSubstr("Two more packs (3 in all) make it start"));
}

TEST(candlemark_start, a_motor_for_230_volts_is_refused_at_once) {
    auto text = sump;
    text.replace(text.find("\"115 V\""), 7, "\"230 V\"");
    const auto ended = candlemark({"start", file_with(text, "sump_230.toml")});
    EXPECT_EQ(ended.status, 1) << ended.errors;
    EXPECT_THAT(ended.output, HasSubstr("230 V"));
    EXPECT_THAT(ended.output, HasSubstr("STOP"));
}

TEST(candlemark_start, a_load_like_one_of_the_list_needs_no_more_words) {
    auto text = sump;
    const auto from = text.find("power = \"600 W\"");
    text.replace(from, text.find("[[load]]", from) - from, "like = \"sump pump 1/3 hp\"\n");
    for (const std::string question : {"start", "outage", "read"}) {
        const auto ended = candlemark({question, file_with(text, "sump_like.toml"), "--full"});
        EXPECT_LE(ended.status, 1) << question << ended.errors;
        EXPECT_THAT(ended.output, HasSubstr("sump pump")) << question;
    }
    const auto ended = candlemark({"start", file_with(text, "sump_like.toml"), "--full"});
    EXPECT_THAT(ended.output, HasSubstr("as a sump pump 1/3 hp"));
}

TEST(candlemark_start, a_name_that_is_not_in_the_list_is_told_with_those_that_come_close) {
    auto text = sump;
    const auto from = text.find("power = \"600 W\"");
    text.replace(from, text.find("[[load]]", from) - from, "like = \"sump pomp 1/3 hp\"\n");
    const auto ended = candlemark({"start", file_with(text, "sump_pomp.toml")});
    EXPECT_EQ(ended.status, 2);
    EXPECT_THAT(ended.errors, HasSubstr("load[0].like"));
    EXPECT_THAT(ended.errors, HasSubstr("sump pump 1/3 hp"));
}

}  // namespace
