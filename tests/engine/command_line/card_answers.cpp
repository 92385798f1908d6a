#include "command_line/card_answers.hpp"

#include <filesystem>
#include <gmock/gmock.h>

#include <gtest/gtest.h>

namespace {

using command_line::card_answers;

scenario::ReadScenario read(const std::string& name) {
    auto file =
        scenario::read_scenario_file(std::string(CANDLEMARK_SOURCE_DIR "/scenarios/") + name);
    EXPECT_TRUE(file);
    return std::move(*file);
}

double number_of(const answers::Answer& answer, std::string_view key) {
    return std::get<answers::Quantity>(answers::value_at(answer.values, key)->held).value;
}

TEST(card_answers, every_example_has_an_outage_a_ration_and_readings) {
    for (const auto& entry :
         std::filesystem::directory_iterator(std::string(CANDLEMARK_SOURCE_DIR "/scenarios"))) {
        if (entry.path().extension() != ".toml") continue;
        const auto answers = card_answers(read(entry.path().filename()));
        EXPECT_TRUE(answers.outage) << entry.path();
        EXPECT_TRUE(answers.ration) << entry.path();
        EXPECT_GE(answers.readings.size(), 4U) << entry.path();
        EXPECT_LE(answers.readings.size(),
                  static_cast<std::size_t>(command_line::readings_on_a_card));
    }
}

TEST(card_answers, a_lower_reading_never_means_more_charge_or_a_longer_outage) {
    const auto answers = card_answers(read("ice_storm.toml"));
    for (std::size_t next = 1; next < answers.readings.size(); ++next) {
        for (const auto* key : {"charge_low", "charge_high", "lasts_low", "lasts_high"}) {
            EXPECT_LE(number_of(answers.readings[next].answer, key),
                      number_of(answers.readings[next - 1].answer, key))
                << answers.readings[next].reads << " " << key;
        }
    }
}

TEST(card_answers, each_kind_of_pack_but_the_one_in_the_case_is_plugged_in) {
    EXPECT_EQ(card_answers(read("ice_storm.toml")).joins.size(), 1U);
    auto alone = read("ice_storm.toml");
    alone.scenario.packs.resize(1);
    EXPECT_TRUE(card_answers(alone).joins.empty());
}

TEST(card_answers, packs_of_unlike_chemistries_have_no_reading_and_say_why) {
    auto mixed = read("ice_storm.toml");
    mixed.scenario.packs.back().chemistry = scenario::Chemistry::agm;
    const auto answers = card_answers(mixed);
    EXPECT_TRUE(answers.readings.empty());
    EXPECT_THAT(answers.no_reading, testing::HasSubstr("The voltage tells nothing here"));
}

}  // namespace
