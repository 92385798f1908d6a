// What the entries of a log must be in themselves, to one another and to the file.
#include <gmock/gmock.h>

#include <fmt/format.h>
#include <gtest/gtest.h>

#include "engine/scenario/log_sample.hpp"

namespace {

using log_sample::warned_of;
using log_sample::wrong_with;
using testing::HasSubstr;

// Each entry, what is said of it.
struct Refused {
    std::string_view entry;
    std::string_view says;
};

TEST(log_check, what_an_entry_lacks_or_has_too_much_of_is_refused_with_a_mend) {
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

TEST(log_check, before_the_outage_is_refused_and_after_it_warned_of) {
    EXPECT_THAT(wrong_with("[[log]]\nat = 2026-01-14T17:00:00\nreads = \"13.2 V\"\n"),
                HasSubstr("before the outage starts"));
    EXPECT_THAT(warned_of("[[log]]\nat = 2026-01-19T17:00:00\nreads = \"13.2 V\"\n"),
                HasSubstr("after the outage is over"));
}

TEST(log_check, two_entries_of_one_instant_about_one_thing_are_refused_unless_one_is_struck) {
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

TEST(log_check, all_that_is_wrong_is_told_at_once_each_with_its_line) {
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

TEST(log_check, of_no_account_is_warned_of) {
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
