#include "scenario/log.hpp"

#include <algorithm>
#include <gmock/gmock.h>

#include <fmt/format.h>
#include <gtest/gtest.h>

#include "engine/scenario/sample.hpp"
#include "scenario/print.hpp"
#include "scenario/read.hpp"
#include "units/text.hpp"

namespace {

using scenario::Happened;
using scenario::LogEntry;
using testing::HasSubstr;

// Four days from 2026-01-14T18:00:00; main, three of expansion, and loads.
std::string with_log(std::string_view log) {
    return std::string(sample::ice_storm) + "\n" + std::string(log);
}

std::vector<LogEntry> read_log(std::string_view log) {
    const auto read = scenario::read_scenario(with_log(log), "plan.toml");
    if (!read) {
        for (const auto& error : read.error())
            ADD_FAILURE() << units::print(error);
        return {};
    }
    for (const auto& warning : read->warnings)
        ADD_FAILURE() << units::print(warning);
    return read->scenario.log;
}

// What is wrong with a log, each error in one line.
std::string wrong_with(std::string_view log) {
    const auto read = scenario::read_scenario(with_log(log), "plan.toml");
    std::string text;
    if (!read)
        for (const auto& error : read.error())
            text += units::print(error) + "\n";
    return text;
}

std::string warned_of(std::string_view log) {
    const auto read = scenario::read_scenario(with_log(log), "plan.toml");
    EXPECT_TRUE(read.has_value());
    std::string text;
    if (read)
        for (const auto& warning : read->warnings)
            text += units::print(warning) + "\n";
    return text;
}

constexpr std::string_view every_kind = R"([[log]]
at = 2026-01-15T21:30:00
pack = "main"
reads = "12.90 V"
under = "150 W"

[[log]]
at = 2026-01-15T06:00:00
reads = "13.2 V"
rested = "8 h"

[[log]]
at = 2026-01-15T07:00:00
pack = "main"
shows = "62 %"

[[log]]
at = 2026-01-15T18:00:00
load = "refrigerator"
metered = { energy = "1.15 kWh", over = "24 h" }

[[log]]
at = 2026-01-15T16:30:00
sun = "420 Wh"
sky = "grey"

[[log]]
at = 2026-01-15T20:00:00
keeps = "freezer"
temperature = "-11 degC"

[[log]]
at = 2026-01-15T20:05:00
happened = "switched off"
load = "refrigerator"

[[log]]
at = 2026-01-15T20:30:00
happened = "pack left"
pack = "expansion"
count = 1

[[log]]
at = 2026-01-15T23:00:00
happened = "pack back"
pack = "expansion"
shows = "100 %"

[[log]]
at = 2026-01-15T23:30:00
happened = "expected back"
by = 2026-01-17T12:00:00

[[log]]
at = 2026-01-15T23:40:00
strikes = 2026-01-15T07:00:00
pack = "main"
)";

TEST(log, every_kind_of_entry_is_read) {
    using namespace units;
    const auto log = read_log(every_kind);
    ASSERT_EQ(log.size(), 11U);
    EXPECT_EQ(units::print(log[0].at), "2026-01-15T21:30:00");
    EXPECT_EQ(log[0].reads->volts, 12.9 * volt);
    EXPECT_EQ(log[0].reads->decimals, 2);
    EXPECT_EQ(*log[0].under->power, 150.0 * watt);
    EXPECT_EQ(*log[1].rested, 8.0 * hour);
    EXPECT_EQ(*log[2].shows, StateOfCharge(0.62));
    EXPECT_DOUBLE_EQ(log[3].metered->energy / watt_hour, 1150.0);
    EXPECT_EQ(*log[4].sun->taken, 420.0 * watt_hour);
    EXPECT_EQ(log[4].sky, scenario::SeenSky::grey);
    EXPECT_EQ(*log[5].temperature, celsius(-11.0));
    EXPECT_EQ(log[6].happened, Happened::switched_off);
    EXPECT_EQ(log[7].count, 1);
    EXPECT_EQ(log[9].by, log[0].at + 38.5 * hour);
    EXPECT_EQ(log[10].strikes, log[2].at);
}

TEST(log, half_the_last_digit_is_that_of_the_figure_as_typed) {
    using namespace units;
    const auto half = [](std::string_view reads) {
        const auto log =
            read_log(fmt::format("[[log]]\nat = 2026-01-15T21:30:00\nreads = \"{}\"\n", reads));
        return log.empty() ? 0.0 : double(half_last_digit(*log.front().reads) / volt);
    };
    EXPECT_DOUBLE_EQ(half("12.9 V"), 0.05);
    EXPECT_DOUBLE_EQ(half("12.90 V"), 0.005);
    EXPECT_DOUBLE_EQ(half("12,9 V"), 0.05);
    EXPECT_DOUBLE_EQ(half("13 V"), 0.5);
    EXPECT_DOUBLE_EQ(half("12900 mV"), 0.0005);
}

TEST(log, what_stands_is_in_order_of_time_without_what_was_struck) {
    const auto log = read_log(every_kind);
    const auto places = scenario::standing(log);
    EXPECT_EQ(places.size(), 9U);
    EXPECT_EQ(places.front(), 1U);
    EXPECT_EQ(places.back(), 9U);
    EXPECT_EQ(std::ranges::count(places, 2U), 0);   // struck
    EXPECT_EQ(std::ranges::count(places, 10U), 0);  // strikes
    for (std::size_t i = 1; i < places.size(); ++i)
        EXPECT_LE(log[places[i - 1]].at, log[places[i]].at);
}

TEST(log, the_order_in_the_file_changes_nothing) {
    auto log = read_log(every_kind);
    std::vector<std::string> before;
    for (const auto i : scenario::standing(log))
        before.push_back(scenario::print(log[i]));
    std::ranges::reverse(log);
    std::vector<std::string> after;
    for (const auto i : scenario::standing(log))
        after.push_back(scenario::print(log[i]));
    EXPECT_EQ(before, after);
}

TEST(log, the_same_entry_twice_counts_once) {
    const std::string entry = "[[log]]\nat = 2026-01-15T06:00:00\nreads = \"13.2 V\"\n";
    const auto log = read_log(entry + entry);
    EXPECT_EQ(log.size(), 2U);
    EXPECT_EQ(scenario::standing(log).size(), 1U);
}

TEST(log, a_strike_without_a_name_strikes_all_of_its_instant) {
    const auto log = read_log(R"([[log]]
at = 2026-01-15T06:00:00
reads = "13.2 V"
[[log]]
at = 2026-01-15T06:00:00
happened = "switched off"
load = "refrigerator"
[[log]]
at = 2026-01-15T07:00:00
strikes = 2026-01-15T06:00:00
)");
    EXPECT_TRUE(scenario::standing(log).empty());
}

TEST(log, what_is_printed_reads_back_to_the_same_entries) {
    const auto log = read_log(every_kind);
    std::string printed;
    for (const auto& entry : log)
        printed += scenario::print(entry);
    const auto again = read_log(printed);
    ASSERT_EQ(again.size(), log.size());
    for (std::size_t i = 0; i < log.size(); ++i)
        EXPECT_EQ(scenario::print(again[i]), scenario::print(log[i]));
    EXPECT_THAT(printed, HasSubstr("reads = \"12.90 V\""));
}

// Each entry, what is said of it.
struct Refused {
    std::string_view entry;
    std::string_view says;
};

TEST(log, what_an_entry_lacks_or_has_too_much_of_is_refused_with_a_mend) {
    for (const Refused& one : std::vector<Refused>{
             {"", "tells nothing"},
             {"reads = \"13.2 V\"\nshows = \"60 %\"", "reads and shows together"},
             {"shows = \"60 %\"\nunder = \"100 W\"", "under without reads"},
             {"shows = \"60 %\"\nrested = \"8 h\"", "rested without reads"},
             {"reads = \"13 V\"\nunder = \"9 W\"\nrested = \"8 h\"", "a rest beside a load"},
             {"metered = { energy = \"1 kWh\", over = \"24 h\" }", "metered without load"},
             {"temperature = \"-11 degC\"", "temperature without keeps"},
             {"keeps = \"freezer\"", "keeps without temperature"},
             {"sky = \"grey\"", "sky without sun"},
             {"sun = true", "true without strikes"},
             {"happened = \"switched off\"", "no load that was switched"},
             {"happened = \"pack left\"", "no pack that it is about"},
             {"happened = \"fuse opened\"", "neither a load nor a pack"},
             {"happened = \"expected back\"", "by"},
             {"happened = \"expected back\"\nby = 2026-01-15T06:00:00", "not after"},
             {"reads = \"12.9 W\"", "power"},
             {"reads = \"12.9 V\"\npack = \"mian\"", "did you mean main?"},
             {"happened = \"switched off\"\nload = \"toaster\"", "no load of this file"},
             {"happened = \"pack back\"\npack = \"main\"", "which never left"},
             {"happened = \"pack left\"\npack = \"expansion\"\ncount = 4", "3 was joined"},
             {"happened = \"pack joined\"\npack = \"main\"\ncount = 2", "the file has 1"},
             {"strikes = 2026-01-15T05:00:00", "no entry is of that instant"}}) {
        const auto wrong =
            wrong_with(fmt::format("[[log]]\nat = 2026-01-15T06:00:00\n{}\n", one.entry));
        EXPECT_THAT(wrong, HasSubstr(std::string(one.says))) << one.entry;
        EXPECT_THAT(wrong, HasSubstr("log[0]")) << one.entry;
        EXPECT_THAT(wrong, HasSubstr(";")) << one.entry;
        EXPECT_THAT(wrong, HasSubstr("plan.toml:")) << one.entry;
    }
}

TEST(log, before_the_outage_is_refused_and_after_it_warned_of) {
    EXPECT_THAT(wrong_with("[[log]]\nat = 2026-01-14T17:00:00\nreads = \"13.2 V\"\n"),
                HasSubstr("before the outage starts"));
    EXPECT_THAT(warned_of("[[log]]\nat = 2026-01-19T17:00:00\nreads = \"13.2 V\"\n"),
                HasSubstr("after the outage is over"));
}

TEST(log, two_entries_of_one_instant_about_one_thing_are_refused_unless_one_is_struck) {
    const std::string two = R"([[log]]
at = 2026-01-15T06:00:00
reads = "13.2 V"
[[log]]
at = 2026-01-15T06:00:00
reads = "13.1 V"
)";
    EXPECT_THAT(wrong_with(two), HasSubstr("two entries of 2026-01-15T06:00:00"));
    EXPECT_EQ(wrong_with(two + "[[log]]\nat = 2026-01-15T07:00:00\nstrikes = "
                               "2026-01-15T06:00:00\n"),
              "");
    // Of two packs both can be.
    EXPECT_EQ(wrong_with(R"([[log]]
at = 2026-01-15T06:00:00
pack = "main"
reads = "13.2 V"
[[log]]
at = 2026-01-15T06:00:00
pack = "expansion"
reads = "13.1 V"
)"),
              "");
}

TEST(log, all_that_is_wrong_is_told_at_once_each_with_its_line) {
    const auto wrong = wrong_with(R"([[log]]
at = 2026-01-15T06:00:00
pack = "nobody"
reads = "13.2 V"
[[log]]
at = 2026-01-13T06:00:00
reads = "13.1 V"
[[log]]
at = 2026-01-15T08:00:00
happened = "pack back"
pack = "main"
)");
    EXPECT_EQ(std::ranges::count(wrong, '\n'), 3) << wrong;
    for (const char* const place : {"log[0]", "log[1]", "log[2]"})
        EXPECT_THAT(wrong, HasSubstr(place));
}

TEST(log, of_no_account_is_warned_of) {
    const std::string off =
        "[[log]]\nat = 2026-01-15T0{}:00:00\nhappened = \"switched off\"\nload = "
        "\"refrigerator\"\n";
    std::string twice = off + off;
    twice.replace(twice.find("{}"), 2, "6");
    twice.replace(twice.find("{}"), 2, "7");
    EXPECT_THAT(warned_of(twice), HasSubstr("switched off twice in a row"));
    EXPECT_THAT(warned_of("[[log]]\nat = 2026-01-15T06:00:00\nhappened = \"supply back\"\n"
                          "[[log]]\nat = 2026-01-15T09:00:00\nreads = \"13.2 V\"\n"),
                HasSubstr("after the supply came back"));
}

}  // namespace
