#include "notes/understand.hpp"

#include <algorithm>
#include <gmock/gmock.h>

#include <gtest/gtest.h>
#include <rapidcheck.h>

#include "engine/scenario/sample.hpp"
#include "scenario/file/print.hpp"
#include "scenario/file/read.hpp"
#include "units/clock.hpp"

namespace {

using notes::understand;
using scenario::Happened;
using scenario::LogEntry;
using testing::HasSubstr;

// The ice storm with a freezer whose name has two words.
const scenario::Scenario& plan() {
    static const scenario::Scenario made = [] {
        const auto read =
            scenario::read_scenario(std::string(sample::ice_storm) +
                                        "\n[[load]]\nname = \"chest freezer\"\npower = \"60 W\"\n",
                                    "plan.toml");
        EXPECT_TRUE(read.has_value());
        return read->scenario;
    }();
    return made;
}

const units::LocalTime now = *units::read_local_time("2026-01-15T22:00:00");

// As it would stand in the file, or what is wrong.
std::string entry_of(std::string_view line) {
    const auto read = understand(line, plan(), now);
    if (!read) return "refused: " + units::print(read.error().front());
    std::string text = scenario::print(read->entry);
    text.erase(0, text.find('\n') + 1);
    std::ranges::replace(text, '\n', ';');
    return text;
}

std::string wrong_with(std::string_view line) {
    const auto read = understand(line, plan(), now);
    std::string text;
    if (!read)
        for (const auto& error : read.error())
            text += units::print(error) + "\n";
    return text;
}

TEST(understand, volts_with_what_was_drawn_or_a_rest) {
    EXPECT_EQ(entry_of("21:30 main 12.9 V under 150 W"),
              "at = 2026-01-15T21:30:00;pack = \"main\";reads = \"12.9 V\";under = \"150 W\";");
    EXPECT_EQ(entry_of("21:30 MAIN 12,90V under 12 A"),
              "at = 2026-01-15T21:30:00;pack = \"main\";reads = \"12.90 V\";under = \"12 A\";");
    EXPECT_EQ(entry_of("21:30 13.2 volts rested 8 hours"),
              "at = 2026-01-15T21:30:00;reads = \"13.2 V\";rested = \"8 h\";");
}

TEST(understand, percent_meters_sun_and_thermometers) {
    EXPECT_EQ(entry_of("21:30 the display of main shows 62 %"),
              "at = 2026-01-15T21:30:00;pack = \"main\";shows = \"62 %\";");
    EXPECT_EQ(entry_of("21:30 chest freezer 1.15 kWh over 24 h"),
              "at = 2026-01-15T21:30:00;load = \"chest freezer\";metered = {energy = \"1.15 kWh\", "
              "over = \"1 d\"};");
    EXPECT_EQ(entry_of("21:30 meter on freezer 1.15 kWh in 24 h"),
              entry_of("21:30 chest freezer 1.15 kWh over 24 h"));
    EXPECT_EQ(entry_of("16:30 sun 420 Wh grey"),
              "at = 2026-01-15T16:30:00;sun = \"420 Wh\";sky = \"grey\";");
    EXPECT_EQ(entry_of("20:00 freezer -11 degC"),
              "at = 2026-01-15T20:00:00;keeps = \"chest freezer\";temperature = \"-11 degC\";");
    EXPECT_EQ(entry_of("20:00 room 16 °C"),
              "at = 2026-01-15T20:00:00;keeps = \"room\";temperature = \"16 degC\";");
    EXPECT_THAT(entry_of("20:00 room 50 F"),
                HasSubstr("keeps = \"room\";temperature = \"10 degC\""));
}

TEST(understand, what_was_done_and_what_came_about) {
    EXPECT_THAT(entry_of("20:05 refrigerator off"),
                HasSubstr("load = \"refrigerator\";happened = \"switched off\""));
    EXPECT_THAT(entry_of("20:05 switched on the refrigerator"),
                HasSubstr("load = \"refrigerator\";happened = \"switched on\""));
    EXPECT_THAT(entry_of("20:05 2 expansion left"),
                HasSubstr("pack = \"expansion\";count = 2;happened = \"pack left\""));
    EXPECT_THAT(entry_of("20:05 expansion back 80 %"),
                HasSubstr("pack = \"expansion\";shows = \"80 %\";happened = \"pack back\""));
    EXPECT_THAT(entry_of("20:05 expansion joined"), HasSubstr("happened = \"pack joined\""));
    EXPECT_THAT(entry_of("20:05 expansion fuse blew"), HasSubstr("happened = \"fuse opened\""));
    EXPECT_THAT(entry_of("20:05 supply back"), HasSubstr("happened = \"supply back\""));
    EXPECT_EQ(entry_of("20:05 expected back by 12:00"),
              "at = 2026-01-15T20:05:00;happened = \"expected back\";by = 2026-01-16T12:00:00;");
    EXPECT_EQ(entry_of("strike 21:30 main"),
              "at = 2026-01-15T22:00:00;pack = \"main\";strikes = 2026-01-15T21:30:00;");
    EXPECT_EQ(entry_of("strike 16:30 sun"),
              "at = 2026-01-15T22:00:00;sun = true;strikes = 2026-01-15T16:30:00;");
}

TEST(understand, what_was_understood_is_said_back) {
    const auto said = [](std::string_view line) {
        const auto read = understand(line, plan(), now);
        return read ? in_english(read->said) : std::string();
    };
    EXPECT_EQ(said("21:30 main 12.90 V under 150 W"),
              "Thursday 15 Jan 21:30: main reads 12.90 V while 150 W is drawn.");
    EXPECT_EQ(said("2 expansion left"), "Thursday 15 Jan 22:00: 2 of expansion left.");
    EXPECT_EQ(said("strike 21:30 main"), "Struck: the entry of Thursday 15 Jan 21:30, of main.");
}

TEST(understand, what_is_not_understood_is_named) {
    EXPECT_THAT(wrong_with("21:30 main about 12.9 V"), HasSubstr("found \"about\""));
    EXPECT_THAT(wrong_with("21:30 main not 12.9 V"), HasSubstr("found \"not\""));
    EXPECT_THAT(wrong_with("21:30 mian 12.9 V"), HasSubstr("found \"mian\""));
    EXPECT_THAT(wrong_with("21:30 main 12.9 X"), HasSubstr("12.9"));
    EXPECT_THAT(wrong_with(""), HasSubstr("nothing that was read or done"));
    EXPECT_THAT(wrong_with("21:30 main"), HasSubstr("found"));
    EXPECT_THAT(wrong_with("main 12.9 V 62 %"), HasSubstr("several things"));
    EXPECT_THAT(wrong_with("main 12.9 V 13.0 V"), HasSubstr("second voltage"));
    EXPECT_THAT(wrong_with("1.15 kWh over 24 h"), HasSubstr("not of what"));
    EXPECT_THAT(wrong_with("freezer 1.15 kWh"), HasSubstr("without the time"));
    EXPECT_THAT(wrong_with("-11 degC"), HasSubstr("where the thermometer hangs"));
    EXPECT_THAT(wrong_with("toaster off"), HasSubstr("toaster"));
    EXPECT_THAT(wrong_with("main 12.9 V refrigerator"), HasSubstr("which this is not about"));
    EXPECT_THAT(wrong_with("20:00 21:30 main 12.9 V"), HasSubstr("two times"));
    EXPECT_THAT(wrong_with("refrigerator 85 W"), HasSubstr("no voltage"));
    EXPECT_THAT(wrong_with("main 12.9 V 8 h"), HasSubstr("belongs to nothing"));
}

TEST(understand, all_lines_are_told_of_at_once) {
    const auto read =
        notes::understand_all({"main 12.9 X", "", "toaster off", "main 13 V"}, plan(), now);
    ASSERT_FALSE(read.has_value());
    EXPECT_GE(read.error().size(), 2U);
    const auto good = notes::understand_all({"main 13 V", " ", "main 62 %"}, plan(), now);
    ASSERT_TRUE(good.has_value());
    EXPECT_EQ(good->size(), 2U);
}

// ---- Whatever is typed.

const std::vector<std::string>& pieces() {
    static const std::vector<std::string> all{"21:30",         "yesterday", "main",   "expansion",
                                              "refrigerator",  "freezer",   "12.9",   "V",
                                              "12.9V",         "150 W",     "under",  "rested",
                                              "8 h",           "62 %",      "on",     "off",
                                              "left",          "back",      "2",      "sun",
                                              "420 Wh",        "grey",      "over",   "24 h",
                                              "1 kWh",         "fuse",      "opened", "-11",
                                              "degC",          "supply",    "room",   "strike",
                                              "expected back", "by 12:00",  "not",    "zzz",
                                              "\xC2\xB0",      "\"",        "=",      "[[log]]",
                                              "joined"};
    return all;
}

TEST(understand, whatever_is_typed_is_understood_whole_or_refused_in_words) {
    EXPECT_TRUE(rc::check([] {
        const auto words =
            *rc::gen::container<std::vector<std::string>>(rc::gen::elementOf(pieces()));
        std::string line;
        for (const auto& word : words)
            line += (line.empty() ? "" : " ") + word;
        const auto read = understand(line, plan(), now);
        if (!read) {
            RC_ASSERT(!read.error().empty());
            for (const auto& error : read.error())
                RC_ASSERT(!error.found.empty() && !error.remedy.empty());
            return;
        }
        RC_ASSERT(line.find("not") == std::string::npos);
        RC_ASSERT(line.find("zzz") == std::string::npos);
        RC_ASSERT(!read->said.empty());
        // What is understood can be written down and read back the same, or the file says why not.
        const auto text = notes::with_entries(scenario::print(plan()), {read->entry});
        RC_ASSERT(text.has_value());
        const auto again = scenario::read_scenario(*text, "plan.toml");
        if (again) {
            RC_ASSERT(again->scenario.log.size() == 1U);
            RC_ASSERT(scenario::print(again->scenario.log.front()) == scenario::print(read->entry));
        } else {
            RC_ASSERT(again.error().front().where.starts_with("log"));
        }
    }));
}

TEST(understand, any_bytes_at_all_end_in_words) {
    EXPECT_TRUE(rc::check([] {
        const auto line = *rc::gen::arbitrary<std::string>();
        const auto read = understand(line, plan(), now);
        RC_ASSERT(read.has_value() || !read.error().empty());
    }));
}

}  // namespace
