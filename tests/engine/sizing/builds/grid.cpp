#include "sizing/builds/grid.hpp"

#include <gtest/gtest.h>

#include "scenario/file/read.hpp"
#include "sizing/members_of.hpp"

namespace {

using namespace units;

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

// Each cell by itself, to the member.
TEST(grid, has_in_each_cell_the_chance_of_its_own_outages) {
    const auto members = members_of(2, 2);
    sizing::MemberRuns runs(members);
    const sizing::GridAsked asked{.most_packs = 6, .most_panels = 4, .threads = 2};
    auto grid = *sizing::grid_of(runs, asked);
    ASSERT_EQ(grid.cells.size(), 30U);
    for (const auto& cell : grid.cells) {
        const auto ends = runs.ends(cell.packs, cell.panels);
        const auto figures = members.figures(ends, asked.goal);
        EXPECT_EQ(cell.figures.of, figures.of) << cell.packs << " " << cell.panels;
        EXPECT_EQ(cell.figures.low, figures.low);
        EXPECT_EQ(&grid.at(cell.packs, cell.panels), &cell);
    }
    EXPECT_LT(grid.outages_run, 64U * 12U);
    sizing::time_cell(grid, runs, asked, 3, 2);
    const auto& timed = grid.at(3, 2);
    EXPECT_TRUE(timed.timed);
    EXPECT_EQ(timed.figures.count_on, members.figures(runs.ends(3, 2), asked.goal).count_on);
}

TEST(grid, stops_where_it_is_told_to) {
    const auto members = members_of(2, 2);
    sizing::MemberRuns runs(members);
    EXPECT_FALSE(sizing::grid_of(runs, {.progress = [](double) { return false; }}));
}

// ---- Where nobody knows how long it lasts.

const std::string open_end = "lasts = \"?\"\nhalf_over_by = \"50 h\"";

TEST(open_ended, each_cell_of_the_grid_has_the_chance_of_its_own_outages) {
    const auto members = members_of(2, 2, "", 64, open_end);
    sizing::MemberRuns runs(members);
    const sizing::GridAsked asked{.most_packs = 6, .most_panels = 3, .threads = 2};
    const auto grid = *sizing::grid_of(runs, asked);
    ASSERT_EQ(grid.cells.size(), 24U);
    EXPECT_EQ(grid.cells[7].figures.of,
              sizing::grid_of(runs, {.most_packs = 6, .most_panels = 3, .threads = 1})
                  ->cells[7]
                  .figures.of);
    for (const auto& cell : grid.cells) {
        const auto figures = members.figures(runs.ends(cell.packs, cell.panels), asked.goal);
        EXPECT_EQ(cell.figures.of, figures.of) << cell.packs << " " << cell.panels;
        EXPECT_EQ(cell.figures.count_on, figures.count_on) << cell.packs << " " << cell.panels;
        EXPECT_EQ(&grid.at(cell.packs, cell.panels), &cell);
        if (cell.packs > 1)
            EXPECT_GE(cell.figures.of, grid.at(cell.packs - 1, cell.panels).figures.of);
        if (cell.panels > 0)
            EXPECT_GE(cell.figures.of, grid.at(cell.packs, cell.panels - 1).figures.of);
    }
}

TEST(open_ended, a_grid_that_is_stopped_is_not_there) {
    const auto members = members_of(1, 1, "", 64, open_end);
    sizing::MemberRuns runs(members);
    int told = 0;
    const auto stopping = [&](double done) {
        EXPECT_LE(done, 1.0);
        return ++told < 2;
    };
    EXPECT_FALSE(sizing::grid_of(
        runs, {.most_packs = 3, .most_panels = 3, .threads = 1, .progress = stopping}));
    EXPECT_EQ(told, 2);
}

}  // namespace
