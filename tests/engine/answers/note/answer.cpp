#include "answers/note/answer.hpp"

#include <algorithm>
#include <string>

#include <gtest/gtest.h>

#include "scenario/file/read.hpp"
#include "support/in_english.hpp"

namespace {

using answers::cautions_of_log;
using scenario::Happened;
using scenario::LogEntry;

scenario::Scenario packs_at(const char* warmth, const char* chemistry = "lifepo4") {
    const auto read = scenario::read_scenario(
        std::string("format = 1\n[outage]\nstarts = 2026-01-14T18:00:00\nlasts = \"60 h\"\n"
                    "battery_temperature = \"") +
            warmth + "\"\n[[pack]]\nname = \"main\"\nchemistry = \"" + chemistry +
            "\"\ncapacity = \"100 Ah\"\nvoltage = \"12.8 V\"\n",
        "plan.toml");
    EXPECT_TRUE(read.has_value());
    return read ? read->scenario : scenario::Scenario{};
}

LogEntry happened(Happened what, const char* pack = nullptr) {
    LogEntry entry;
    entry.happened = what;
    if (pack) entry.pack = pack;
    return entry;
}

bool tells(const std::vector<answers::Caution>& cautions, const std::string& words) {
    return std::ranges::any_of(cautions, [&](const answers::Caution& one) {
        return in_english(one.text).find(words) != std::string::npos;
    });
}

TEST(cautions_of_log, a_pack_from_the_cold_is_warmed_before_it_is_charged) {
    for (const Happened what :
         {Happened::pack_back, Happened::pack_joined, Happened::fuse_opened}) {
        EXPECT_TRUE(tells(cautions_of_log(packs_at("2 degC"), {happened(what, "main")}),
                          "not charged before it is warm"));
        EXPECT_FALSE(tells(cautions_of_log(packs_at("20 degC"), {happened(what, "main")}),
                           "not charged before it is warm"));
    }
    EXPECT_FALSE(
        tells(cautions_of_log(packs_at("2 degC", "agm"), {happened(Happened::pack_back, "main")}),
              "warm"));
}

TEST(cautions_of_log, a_fuse_waits_for_its_fault_to_be_found) {
    EXPECT_TRUE(
        tells(cautions_of_log(packs_at("20 degC"), {happened(Happened::fuse_opened, "main")}),
              "before that fault is found"));
}

TEST(cautions_of_log, a_supply_that_is_back_is_not_joined_and_a_generator_stays_outdoors) {
    const auto cautions = cautions_of_log(packs_at("20 degC"), {happened(Happened::supply_back)});
    EXPECT_TRUE(tells(cautions, "never join this unit to the house's wiring"));
    EXPECT_TRUE(tells(cautions, "outdoors"));
}

TEST(cautions_of_log, a_log_of_readings_calls_for_none) {
    LogEntry reading;
    reading.shows = units::StateOfCharge(0.5);
    EXPECT_TRUE(cautions_of_log(packs_at("2 degC"), {reading}).empty());
}

}  // namespace
