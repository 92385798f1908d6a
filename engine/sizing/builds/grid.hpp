// Every number of packs with every number of panels, for the same members. method.md (3)
#pragma once

#include <cstddef>
#include <functional>
#include <optional>
#include <vector>

#include "sizing/member_runs.hpp"

namespace sizing {

//   most_packs    at least 1
//   most_panels   0 where the scenario describes no panel
//   threads       0: as many as there are processors; the result is the same to the last bit
//   progress      called with the share done, from one thread at a time; false stops it
struct GridAsked {
    int most_packs = 16;
    int most_panels = 12;
    units::Probability goal{0.9};
    unsigned threads = 0;
    std::function<bool(double)> progress = {};
};

//   figures   of the chance; the times in it only where `timed`
struct Cell {
    int packs = 1;
    int panels = 0;
    chance::Figures figures;
    bool timed = false;
};

//   cells   by packs from 1, within them by panels from 0
struct Grid {
    int most_packs = 0;
    int most_panels = 0;
    std::vector<Cell> cells;
    std::size_t outages_run = 0;

    [[nodiscard]] const Cell& at(int packs, int panels) const {
        return cells[place(packs, panels)];
    }
    [[nodiscard]] std::size_t place(int packs, int panels) const {
        return static_cast<std::size_t>((packs - 1) * (most_panels + 1) + panels);
    }
};

// Goes down the staircase of each member: a pack or a panel more never makes it end sooner, so that
// most cells need no run. Where nobody knows how long the outage lasts nearly every cell is run,
// for the first block of members.
//   gives     nothing when progress stopped it
[[nodiscard]] std::optional<Grid> grid_of(MemberRuns& runs, const GridAsked& asked);

// Gives the cell its times, once: each member is run in it, which settles its chance as well.
void time_cell(Grid& grid, MemberRuns& runs, const GridAsked& asked, int packs, int panels);

}  // namespace sizing
