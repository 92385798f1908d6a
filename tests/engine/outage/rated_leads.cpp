// Plugs and switches of unlike leads, each held against the current of its own pack.
#include "outage/rated_leads.hpp"

#include <cmath>

#include <gtest/gtest.h>

#include "outage/plan.hpp"
#include "scenario/file/read.hpp"

namespace {

using namespace units;

// Inside 10 mohm each; 11 and 22 mohm with their leads, so they share as 2 to 1.
std::string two_leads(const std::string& of_main, const std::string& of_other,
                      const std::string& more) {
    return R"(format = 1
title = "two leads"
[outage]
starts = 2026-01-14T18:00:00
lasts = "1 h"
battery_temperature = "25 degC"
[[pack]]
name = "main"
chemistry = "lifepo4"
capacity = "100 Ah"
resistance = "10 mohm"
charge = "45 %"
lead_resistance = "1 mohm"
)" + of_main +
           R"(
[[pack]]
name = "plugged in"
lead_resistance = "12 mohm"
)" + of_other +
           more;
}

const std::string heater = R"(
[[load]]
name = "heater"
from = "12V"
power = "900 W"
hours = ["18:00-18:03"]
)";

const std::string generator = R"(
[[charger]]
name = "generator"
kind = "generator"
current = "60 A"
hours = ["18:00-18:03"]
[[load]]
name = "lamp"
from = "12V"
power = "0.1 W"
)";

outage::Plan planned(const std::string& text) {
    const auto read = scenario::read_scenario(text, "leads.toml");
    if (!read) throw std::runtime_error(words::in_english(read.error().front().found));
    auto plan = outage::plan_outage(read->scenario);
    if (!plan) throw std::runtime_error(words::in_english(plan.error().front().found));
    return *std::move(plan);
}

// By hand: 11 and 22 mohm beside each other are 7.33 mohm; 900 W at 13.19 V of rest ask for
// (13.19 - sqrt(13.19^2 - 4 x 0.00733 x 900)) / (2 x 0.00733) = 71.0 A, so 47.3 and 23.7 A.
TEST(rated_leads, each_pack_carries_its_share_and_is_held_against_its_own_plug) {
    const auto plan = planned(two_leads("connector = \"50 A\"", "connector = \"20 A\"", heater));
    const auto& currents = plan.likely.pack_currents;
    ASSERT_EQ(currents.size(), 2u);
    // on this plateau three minutes move the rested voltage by 4 mV
    EXPECT_NEAR(currents[0].given / ampere, 47.3, 0.5);
    EXPECT_NEAR(currents[1].given / ampere, 23.7, 0.3);
    EXPECT_EQ(plan.likely.highest_pack_current, currents[0].given);
    // 47 A never pass the largest plug, but 24 A pass the smallest
    const auto hot = outage::hot_parts(plan.leads, currents);
    ASSERT_EQ(hot.size(), 1u);
    EXPECT_EQ(hot[0].pack, "plugged in");
    EXPECT_EQ(hot[0].part.by, unit::Limiter::connector);
    EXPECT_NEAR(hot[0].part.most.value / ampere, 20.0, 1e-9);
    EXPECT_EQ(hot[0].carries, currents[1].given);
    EXPECT_EQ(hot[0].flow, unit::Flow::out_of_pack);
    const auto wide = planned(two_leads("connector = \"50 A\"", "connector = \"25 A\"", heater));
    EXPECT_TRUE(outage::hot_parts(wide.leads, wide.likely.pack_currents).empty());
}

// By hand: 60 A share as 2 to 1, so 40 and 20 A; the first minute moves nothing of note.
TEST(rated_leads, charging_is_held_against_the_same_plugs) {
    const auto plan = planned(two_leads("connector = \"50 A\"", "connector = \"15 A\"", generator));
    const auto& currents = plan.likely.pack_currents;
    ASSERT_EQ(currents.size(), 2u);
    EXPECT_NEAR(currents[0].taken / ampere, 40.0, 1.2);
    EXPECT_NEAR(currents[1].taken / ampere, 20.0, 0.6);
    const auto hot = outage::hot_parts(plan.leads, currents);
    ASSERT_EQ(hot.size(), 1u);
    EXPECT_EQ(hot[0].pack, "plugged in");
    EXPECT_EQ(hot[0].flow, unit::Flow::into_pack);
}

// Alike in all but their plugs they are one bank, and the smaller plug still counts.
TEST(rated_leads, packs_that_go_as_one_keep_their_own_plugs) {
    const std::string alike = "lead_resistance = \"1 mohm\"\n";
    std::string text = two_leads("connector = \"50 A\"", "connector = \"20 A\"", heater);
    text.replace(text.find("lead_resistance = \"12 mohm\"\n"), 28, alike);
    const auto plan = planned(text);
    ASSERT_EQ(plan.bank_names.size(), 1u);
    ASSERT_EQ(plan.leads.size(), 2u);
    const auto hot = outage::hot_parts(plan.leads, plan.likely.pack_currents);
    ASSERT_EQ(hot.size(), 1u);
    EXPECT_EQ(hot[0].pack, "plugged in");
}

}  // namespace
