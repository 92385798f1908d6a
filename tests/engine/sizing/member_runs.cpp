#include "sizing/member_runs.hpp"

#include <algorithm>

#include <gtest/gtest.h>

#include "scenario/file/read.hpp"
#include "sizing/members_of.hpp"

namespace {

using namespace units;
using chance::MemberEnd;

// Packs on leads of their own: two kinds.
chance::Members members_of(int packs, int panels, const std::string& more = "", int wanted = 64,
                           const std::string& length = "lasts = \"4 d\"") {
    const std::string text = R"(format = 1
title = "Runs"
[outage]
starts = 2026-03-05T18:00:00
)" + length + R"(
cause = "storm"
battery_temperature = "12 degC"
[place]
name = "Cleveland OH"
[[pack]]
name = "main"
chemistry = "lifepo4"
capacity = "100 Ah"
rated_over = "5 h"
[[pack]]
name = "expansion"
chemistry = "lifepo4"
capacity = "100 Ah"
rated_over = "5 h"
lead_resistance = "9 mohm"
count = )" + std::to_string(packs - 1) +
                             R"(
[inverter]
continuous = "2000 W"
surge = "4000 W"
[[panel]]
power = "100 W"
tilt = "45 deg"
placement = "fixed"
azimuth = "180 deg"
count = )" + std::to_string(panels) +
                             R"(
[[load]]
name = "freezer"
from = "ac"
power = "90 W"
runs = { on = "15 min", every = "45 min" }
evidence = "label"
motor = { kind = "compressor_rsir" }
[[load]]
name = "lamps"
from = "12V"
power = "12 W"
hours = ["06:30-08:00", "16:30-22:30"]
evidence = "metered"
[[load]]
name = "router"
from = "ac"
power = "14 W"
evidence = "guess"
)" + more;
    const auto read = scenario::read_scenario(text, "runs.toml", {});
    if (!read) throw std::runtime_error(read.error().front().where + read.error().front().found);
    return sizing::members_of(
        read->scenario, {},
        std::make_shared<const outage::Ready>(outage::make_ready(read->scenario).value()), 1,
        wanted);
}

TEST(member_runs, each_ends_as_by_the_clock_alone) {
    const auto members = members_of(2, 2);
    sizing::MemberRuns runs(members);
    for (const int packs : {1, 2, 5})
        for (const int panels : {0, 2, 6})
            EXPECT_EQ(runs.ends(packs, panels, 2),
                      members.ends({.packs = packs, .panels = panels, .off = {}}));
    const chance::SwitchedOff off{false, true, false};
    EXPECT_EQ(sizing::MemberRuns(members, off).ends(2, 2),
              members.ends({.packs = 2, .panels = 2, .off = off}));
}

TEST(member_runs, more_packs_are_the_fewest_for_enough_of_them) {
    const auto members = members_of(2, 1, "", 128);
    sizing::MemberRuns runs(members);
    const auto ends = runs.ends();
    const auto more = sizing::more_packs(runs, ends, Probability(0.9), 16);
    ASSERT_GT(more.more, 1);
    const auto share = [&](int packs) {
        const auto all = runs.ends(packs, 1);
        return double(std::ranges::count_if(all, &MemberEnd::survives)) / double(all.size());
    };
    EXPECT_GE(share(2 + more.more), 0.9);
    EXPECT_LT(share(1 + more.more), 0.9);
    EXPECT_DOUBLE_EQ(more.of.value(), share(2 + more.more));
    const auto none = sizing::more_packs(runs, ends, Probability(0.9), 1);
    EXPECT_EQ(none.more, 0);
    EXPECT_EQ(none.tried, 1);
    EXPECT_DOUBLE_EQ(none.of.value(), share(3));
    const auto from_one = sizing::fewest_packs(runs, Probability(0.9), 18);
    EXPECT_EQ(from_one.packs, 2 + more.more);
    EXPECT_EQ(from_one.of, more.of);
}

// ---- Where nobody knows how long it lasts.

const std::string open_end = "lasts = \"?\"\nhalf_over_by = \"50 h\"";

TEST(open_ended, more_packs_are_the_fewest_whose_chance_is_enough) {
    const auto members = members_of(2, 1, "", 64, open_end);
    sizing::MemberRuns runs(members);
    const auto share = [&](int packs) {
        return members.figures(runs.ends(packs, 1), Probability(0.8)).of.value();
    };
    const auto more = sizing::more_packs(runs, runs.ends(), Probability(0.8), 16);
    ASSERT_GT(more.more, 1);
    EXPECT_GE(share(2 + more.more), 0.8);
    EXPECT_LT(share(1 + more.more), 0.8);
    EXPECT_DOUBLE_EQ(more.of.value(), share(2 + more.more));
    EXPECT_LE(more.interval.low, more.of);
    EXPECT_EQ(sizing::fewest_packs(runs, Probability(0.8), 18).packs, 2 + more.more);
    const auto none = sizing::more_packs(runs, runs.ends(), Probability(0.8), 1);
    EXPECT_EQ(none.more, 0);
    EXPECT_DOUBLE_EQ(none.of.value(), share(3));
}

}  // namespace
