// An entry of the log said back, and put behind the text of a file.
#include <gmock/gmock.h>

#include <gtest/gtest.h>

#include "engine/scenario/sample.hpp"
#include "notes/understand.hpp"
#include "units/clock.hpp"

namespace {

using namespace units;
using notes::in_words;
using scenario::Happened;
using scenario::LogEntry;
using testing::HasSubstr;

// A Thursday.
const LocalTime evening = *read_local_time("2026-01-15T21:30:00");

LogEntry of_main(double volts, int decimals) {
    return {.at = evening,
            .pack = "main",
            .reads = scenario::VoltageShown{.volts = volts * volt, .decimals = decimals}};
}

TEST(in_words, a_voltage_is_said_with_the_figures_that_were_typed) {
    EXPECT_EQ(in_words(of_main(12.9, 2)), "Thursday 15 Jan 21:30: main reads 12.90 V.");
    LogEntry drawn = of_main(12.9, 1);
    drawn.under = scenario::DrawnMeanwhile{.power = 150.0 * watt};
    EXPECT_EQ(in_words(drawn), "Thursday 15 Jan 21:30: main reads 12.9 V while 150 W is drawn.");
    LogEntry rested = of_main(13.2, 1);
    rested.pack.reset();
    rested.rested = 8.0 * hour;
    EXPECT_EQ(in_words(rested),
              "Thursday 15 Jan 21:30: all packs, joined, read 13.2 V after 8 h of rest.");
}

TEST(in_words, what_happened_is_said_of_whom) {
    const auto said = [](LogEntry entry) {
        entry.at = evening;
        return in_english(in_words(entry)).substr(std::string("Thursday 15 Jan 21:30: ").size());
    };
    EXPECT_EQ(said({.load = "modem", .happened = Happened::switched_off}),
              "modem was switched off.");
    EXPECT_EQ(said({.pack = "expansion", .count = 2, .happened = Happened::pack_left}),
              "2 of expansion left.");
    EXPECT_EQ(
        said({.pack = "expansion", .shows = StateOfCharge(0.8), .happened = Happened::pack_back}),
        "expansion came back, its display at 80 %.");
    EXPECT_EQ(said({.load = "pump", .happened = Happened::fuse_opened}),
              "the fuse of pump opened.");
    EXPECT_EQ(said({.happened = Happened::expected_back, .by = evening + 14.5 * hour}),
              "the supply is expected back by Friday 16 Jan 12:00.");
}

TEST(in_words, what_is_struck_is_named) {
    EXPECT_EQ(in_words({.at = evening, .pack = "main", .strikes = evening}),
              "Struck: the entry of Thursday 15 Jan 21:30, of main.");
}

TEST(with_entries, every_byte_that_was_there_stays) {
    const LogEntry one = of_main(12.9, 1);
    for (const std::string& text : {std::string(sample::ice_storm), std::string("a = 1"),
                                    std::string("a = 1\r\nb = 2\r\n"), std::string()}) {
        const auto with = notes::with_entries(text, {one});
        ASSERT_TRUE(with.has_value());
        EXPECT_TRUE(with->starts_with(text));
        EXPECT_THAT(*with, HasSubstr("[[log]]"));
        EXPECT_EQ(with->find("\r\n") != std::string::npos, text.find("\r\n") != std::string::npos);
    }
    EXPECT_FALSE(notes::with_entries("log = []\n", {one}).has_value());
}

}  // namespace
