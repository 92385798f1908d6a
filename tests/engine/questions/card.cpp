#include "questions/card.hpp"

#include <filesystem>
#include <gmock/gmock.h>

#include <gtest/gtest.h>

namespace {

scenario::ReadScenario read(const std::string& name) {
    auto file =
        scenario::read_scenario_file(std::string(CANDLEMARK_SOURCE_DIR "/scenarios/") + name);
    EXPECT_TRUE(file);
    return std::move(*file);
}

questions::CardFound found_in(const scenario::ReadScenario& read) {
    return questions::find_for_card(read, {});
}

TEST(card, every_example_has_an_outage_a_ration_and_readings) {
    for (const auto& entry :
         std::filesystem::directory_iterator(std::string(CANDLEMARK_SOURCE_DIR "/scenarios"))) {
        if (entry.path().extension() != ".toml") continue;
        const auto card = found_in(read(entry.path().filename()));
        EXPECT_TRUE(card.outage) << entry.path();
        EXPECT_TRUE(card.ration) << entry.path();
        EXPECT_GE(card.readings.size(), 4U) << entry.path();
        EXPECT_LE(card.readings.size(), questions::readings_on_a_card);
    }
}

TEST(card, a_lower_reading_never_means_more_charge_or_a_longer_outage) {
    const auto card = found_in(read("ice_storm.toml"));
    for (std::size_t next = 1; next < card.readings.size(); ++next) {
        const auto& above = card.readings[next - 1].found;
        const auto& below = card.readings[next].found;
        EXPECT_LT(card.readings[next].reads, card.readings[next - 1].reads);
        EXPECT_LE(below.charge.low, above.charge.low);
        EXPECT_LE(below.charge.high, above.charge.high);
        EXPECT_LE(below.from_now->lasts_low, above.from_now->lasts_low);
        EXPECT_LE(below.from_now->lasts_high, above.from_now->lasts_high);
    }
}

TEST(card, each_kind_of_pack_but_the_one_in_the_case_is_plugged_in) {
    EXPECT_EQ(found_in(read("ice_storm.toml")).joins.size(), 1U);
    auto alone = read("ice_storm.toml");
    alone.scenario.packs.resize(1);
    EXPECT_TRUE(found_in(alone).joins.empty());
}

TEST(card, packs_of_unlike_chemistries_have_no_reading_and_say_why) {
    auto mixed = read("ice_storm.toml");
    mixed.scenario.packs.back().chemistry = scenario::Chemistry::agm;
    const auto card = found_in(mixed);
    EXPECT_TRUE(card.readings.empty());
    ASSERT_FALSE(card.unreadable.empty());
    EXPECT_THAT(card.unreadable.front().found, testing::HasSubstr("chemistr"));
}

}  // namespace
