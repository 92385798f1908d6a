#include "outage/panel_counts.hpp"

#include "scenario/read.hpp"

namespace {

using namespace units;
using outage::PanelLimit;

outage::Ready ready_for(const std::string& more, double load_watts, int packs = 2) {
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
    if (!read) throw std::runtime_error(read.error().front().found);
    auto ready = outage::make_ready(read->scenario);
    if (!ready) throw std::runtime_error(ready.error().front().found);
    return std::move(*ready);
}

const std::string limit = "[charge_controller]\nkind = \"mppt\"\ninput_limit = \"100 W\"\n";

TEST(panel_counts, the_count_of_the_file_gives_what_the_file_gives) {
    const auto ready = ready_for("", 60.0);
    const auto counts = outage::panel_counts(ready, 3, 50, 1);
    ASSERT_EQ(counts.size(), 4u);
    EXPECT_EQ(counts[2].endings, outage::endings_in_weathers(ready, 50, 1));
    EXPECT_EQ(counts[2].offered.likely, outage::recharge_of(ready, 2000, 1)->whole.likely);
}

TEST(panel_counts, no_panel_gives_nothing_and_each_more_never_less) {
    const auto counts = outage::panel_counts(ready_for("", 60.0), 5, 50, 1);
    EXPECT_EQ(counts[0].offered.high, Energy{});
    EXPECT_EQ(counts[0].taken, Energy{});
    for (std::size_t i = 1; i < counts.size(); ++i) {
        EXPECT_GT(counts[i].offered.likely, counts[i - 1].offered.likely);
        EXPECT_GE(counts[i].taken, counts[i - 1].taken);
    }
}

TEST(panel_counts, without_limits_offered_grows_with_the_count) {
    const auto counts = outage::panel_counts(ready_for("", 60.0), 4, 20, 1);
    EXPECT_NEAR(counts[4].offered.likely / counts[1].offered.likely, 4.0, 1e-9);
}

// 100 W at the input is one panel of 100 W in full sun: more help on grey hours only.
TEST(panel_counts, an_input_limit_is_told_as_what_stops_them) {
    const auto counts = outage::panel_counts(ready_for(limit, 200.0, 20), 6, 50, 1);
    const auto enough = outage::enough_panels(counts);
    ASSERT_TRUE(enough);
    EXPECT_EQ(enough->why, PanelLimit::controller);
    EXPECT_GE(enough->panels, 1);
    EXPECT_LE(enough->panels, 5);
}

TEST(panel_counts, full_packs_are_told_as_what_stops_them) {
    const auto enough = outage::enough_panels(outage::panel_counts(ready_for("", 15.0), 6, 50, 1));
    ASSERT_TRUE(enough);
    EXPECT_EQ(enough->why, PanelLimit::packs_full);
    EXPECT_LE(enough->panels, 3);
}

// What lead-acid takes near full and gasses away is no gain, though it is taken.
TEST(panel_counts, what_charging_does_not_store_is_no_gain) {
    std::vector<outage::PanelCount> counts(4);
    for (int panels = 0; panels < 4; ++panels) {
        counts[std::size_t(panels)].panels = panels;
        counts[std::size_t(panels)].taken = panels * 500.0 * watt_hour;
    }
    EXPECT_FALSE(outage::enough_panels(counts));
    counts[3].lost = 450.0 * watt_hour;
    const auto enough = outage::enough_panels(counts);
    ASSERT_TRUE(enough);
    EXPECT_EQ(enough->panels, 2);
    EXPECT_EQ(enough->why, PanelLimit::packs_full);
}

TEST(panel_counts, a_hungry_load_takes_all_that_more_panels_give) {
    EXPECT_FALSE(outage::enough_panels(outage::panel_counts(ready_for("", 200.0, 20), 4, 50, 1)));
}

TEST(panel_counts, are_the_same_for_any_number_of_threads) {
    const auto ready = ready_for("", 60.0);
    const auto one = outage::panel_counts(ready, 2, 30, 1, 1);
    const auto three = outage::panel_counts(ready, 2, 30, 1, 3);
    for (std::size_t i = 0; i < one.size(); ++i) {
        EXPECT_EQ(one[i].endings, three[i].endings);
        EXPECT_EQ(one[i].taken, three[i].taken);
        EXPECT_EQ(one[i].offered.low, three[i].offered.low);
    }
}

}  // namespace
