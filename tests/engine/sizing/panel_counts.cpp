#include "sizing/panel_counts.hpp"

#include <gtest/gtest.h>

#include "scenario/file/read.hpp"
#include "sizing/members_of.hpp"

namespace {

using namespace units;
using sizing::PanelLimit;

chance::Members members_for(const std::string& more, double load_watts, int packs = 2) {
    const std::string text = R"(format = 1
title = "Counts"
[outage]
starts = 2026-06-05T06:00:00
lasts = "4 d"
cause = "unknown"
battery_temperature = "15 degC"
[place]
name = "Cleveland OH"
[[pack]]
name = "main"
count = )" + std::to_string(packs) +
                             R"(
chemistry = "lifepo4"
capacity = "100 Ah"
[[panel]]
power = "100 W"
count = 2
[[load]]
name = "load"
from = "12V"
power = ")" + std::to_string(load_watts) +
                             " W\"\n" + more;
    const auto read = scenario::read_scenario(text, "counts.toml", {});
    if (!read) throw std::runtime_error(words::in_english(read.error().front().found));
    return sizing::members_of(
        read->scenario, {},
        std::make_shared<const outage::Ready>(outage::make_ready(read->scenario).value()), 1, 64);
}

std::vector<sizing::PanelCount> counts_for(const std::string& more, double load_watts, int most,
                                           int packs = 2, unsigned threads = 0) {
    const auto members = members_for(more, load_watts, packs);
    sizing::MemberRuns runs(members);
    return sizing::panel_counts(runs, most, Probability(0.9), threads);
}

const std::string limit = "[charge_controller]\nkind = \"mppt\"\ninput_limit = \"100 W\"\n";

TEST(panel_counts, the_count_of_the_file_gives_what_the_file_gives) {
    const auto members = members_for("", 60.0);
    const auto counts = counts_for("", 60.0, 3);
    ASSERT_EQ(counts.size(), 4u);
    const auto figures =
        members.figures(members.ends(chance::as_it_is(members.world())), Probability(0.9));
    EXPECT_EQ(counts[2].figures.of, figures.of);
    EXPECT_EQ(counts[2].figures.count_on, figures.count_on);
    EXPECT_EQ(counts[2].sun.kept.likely, sizing::sun_return(members, 2).kept.likely);
}

TEST(panel_counts, no_panel_gives_nothing_and_each_more_never_less) {
    const auto counts = counts_for("", 60.0, 5);
    EXPECT_EQ(counts[0].sun.kept.high, Energy{});
    EXPECT_EQ(counts[0].sun.mean.kept(), Energy{});
    for (std::size_t i = 1; i < counts.size(); ++i) {
        EXPECT_GT(counts[i].sun.offered.likely, counts[i - 1].sun.offered.likely);
        EXPECT_GE(counts[i].sun.kept.likely, counts[i - 1].sun.kept.likely);
        EXPECT_GE(counts[i].sun.mean.kept(), counts[i - 1].sun.mean.kept());
        EXPECT_GE(counts[i].figures.of, counts[i - 1].figures.of);
        EXPECT_GE(counts[i].figures.count_on, counts[i - 1].figures.count_on);
    }
}

TEST(panel_counts, without_limits_offered_grows_with_the_count) {
    const auto counts = counts_for("", 60.0, 4);
    EXPECT_NEAR(counts[4].sun.offered.likely / counts[1].sun.offered.likely, 4.0, 1e-9);
}

// 100 W at the input is one panel of 100 W in full sun: more help on grey hours only.
TEST(panel_counts, an_input_limit_is_told_as_what_stops_them) {
    const auto enough = sizing::enough_panels(counts_for(limit, 200.0, 8, 20));
    ASSERT_TRUE(enough);
    EXPECT_EQ(enough->why, PanelLimit::controller);
    EXPECT_GE(enough->panels, 1);
}

// One row a count: chance, hours to count on; energies in kilowatt-hours.
struct Row {
    double of, count_on, taken, unused, clipped;
};
std::vector<sizing::PanelCount> made(const std::vector<Row>& rows) {
    std::vector<sizing::PanelCount> counts;
    for (const Row& row : rows) {
        sizing::PanelCount count{.panels = int(counts.size())};
        count.figures.of = Probability(row.of);
        count.figures.count_on = row.count_on * hour;
        count.sun.mean.stored = row.taken * 1000.0 * watt_hour;
        count.sun.mean.full = row.unused * 1000.0 * watt_hour;
        count.sun.mean.clipped = row.clipped * 1000.0 * watt_hour;
        counts.push_back(count);
    }
    return counts;
}

TEST(panel_counts, enough_is_where_no_further_one_adds_to_chance_or_hours) {
    // 54, 88 and 99 in 100: what a mean says is enough is not.
    const auto full = sizing::enough_panels(made({{.20, 30, 0, 0, 0},
                                                  {.54, 40, 1, 0, 0},
                                                  {.88, 60, 1.1, .9, 0},
                                                  {.97, 96, 1.2, 1.8, 0},
                                                  {.98, 96, 1.2, 2.8, 0}}));
    ASSERT_TRUE(full);
    EXPECT_EQ(full->panels, 3);
    EXPECT_EQ(full->why, PanelLimit::packs_full);
    // Half an hour each, of all that is offered: the days are dull.
    const auto dull =
        sizing::enough_panels(made({{0, 30, 0, 0, 0}, {0, 30.5, .1, 0, 0}, {.01, 31, .2, 0, 0}}));
    ASSERT_TRUE(dull);
    EXPECT_EQ(dull->panels, 0);
    EXPECT_EQ(dull->why, PanelLimit::too_little);
    const auto sure =
        sizing::enough_panels(made({{.5, 50, 0, 0, 0}, {1, 96, 1, 0, 0}, {1, 96, 1, 1, 0}}));
    ASSERT_TRUE(sure);
    EXPECT_EQ(sure->panels, 1);
    EXPECT_EQ(sure->why, PanelLimit::lasts);
    EXPECT_FALSE(sizing::enough_panels(made({{0, 30, 0, 0, 0}, {0, 32, .4, 0, 0}})));
    EXPECT_FALSE(sizing::enough_panels(made({{0, 30, 0, 0, 0}})));
}

TEST(panel_counts, each_helps_only_where_none_of_them_is_for_nothing) {
    const auto counts = made({{.20, 30, 0, 0, 0}, {.20, 30, 1, 0, 0}, {.30, 31, 2, 0, 0}});
    EXPECT_FALSE(sizing::enough_panels(counts));
    EXPECT_FALSE(sizing::each_helps(counts, 0));
    EXPECT_TRUE(sizing::each_helps(counts, 1));
}

TEST(panel_counts, are_the_same_for_any_number_of_threads) {
    const auto one = counts_for("", 60.0, 2, 2, 1);
    const auto three = counts_for("", 60.0, 2, 2, 3);
    for (std::size_t i = 0; i < one.size(); ++i) {
        EXPECT_EQ(one[i].figures.of, three[i].figures.of);
        EXPECT_EQ(one[i].sun.mean.kept(), three[i].sun.mean.kept());
        EXPECT_EQ(one[i].sun.kept.low, three[i].sun.kept.low);
    }
}

}  // namespace
