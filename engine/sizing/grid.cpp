#include "sizing/grid.hpp"

#include <algorithm>
#include <atomic>
#include <cassert>
#include <mutex>

#include "outage/in_threads.hpp"

namespace sizing {

namespace {

using namespace units;
using chance::MemberEnd;

// The fewest packs that last for each member, with each number of panels; one more than the most
// where none do.
class Staircases {
  public:
    Staircases(MemberRuns& runs, const GridAsked& asked)
        : runs_(runs),
          asked_(asked),
          fewest_(std::size_t(runs.members().count()) * across(), asked.most_packs + 1) {}

    [[nodiscard]] bool lasts(std::size_t member, int packs, int panels) const {
        return fewest_[member * across() + std::size_t(panels)] <= packs;
    }

    // With fewer and fewer panels: a step that lasts goes down in panels, one that fails goes up in
    // packs. method.md (3)
    //   gives   outages run
    std::size_t walk(int block) {
        std::size_t run = 0;
        std::vector<MemberJob> walkers;
        for (int lane = 0; lane < chance::lanes; ++lane)
            walkers.push_back({.lane = lane, .packs = 1, .panels = asked_.most_panels});
        while (!walkers.empty()) {
            const auto ends = runs_.run(block, walkers);
            run += walkers.size();
            for (std::size_t i = 0; i < walkers.size(); ++i)
                go_on(walkers[i], std::size_t(block * chance::lanes + walkers[i].lane),
                      ends[i].survives);
            std::erase_if(walkers, [&](const MemberJob& walker) {
                return walker.panels < 0 || walker.packs > asked_.most_packs;
            });
        }
        return run;
    }

  private:
    MemberRuns& runs_;
    const GridAsked& asked_;
    std::vector<int> fewest_;  // by member, within it by panels

    [[nodiscard]] std::size_t across() const { return std::size_t(asked_.most_panels) + 1; }

    void go_on(MemberJob& walker, std::size_t member, bool lasted) {
        if (!lasted) {
            ++walker.packs;
            return;
        }
        fewest_[member * across() + std::size_t(walker.panels)] = walker.packs;
        --walker.panels;
    }
};

}  // namespace

std::optional<Grid> grid_of(MemberRuns& runs, const GridAsked& asked) {
    assert(asked.most_packs >= 1 && asked.most_panels >= 0);
    const auto& members = runs.members();
    Staircases staircases(runs, asked);
    std::atomic<std::size_t> run{0};
    std::atomic<bool> stopped{false};
    std::mutex telling;
    int done = 0;
    outage::for_each_number(members.blocks(), asked.threads, [&](int block) {
        if (stopped) return;
        run += staircases.walk(block);
        if (!asked.progress) return;
        const std::scoped_lock lock(telling);
        if (!asked.progress(++done / double(members.blocks()))) stopped = true;
    });
    if (stopped) return std::nullopt;

    Grid grid{.most_packs = asked.most_packs,
              .most_panels = asked.most_panels,
              .cells = {},
              .outages_run = run};
    std::vector<MemberEnd> ends(std::size_t(members.count()));
    for (int packs = 1; packs <= asked.most_packs; ++packs)
        for (int panels = 0; panels <= asked.most_panels; ++panels) {
            for (std::size_t i = 0; i < ends.size(); ++i)
                ends[i].survives = staircases.lasts(i, packs, panels);
            grid.cells.push_back(
                {.packs = packs, .panels = panels, .figures = members.figures(ends, asked.goal)});
        }
    return grid;
}

void time_cell(Grid& grid, MemberRuns& runs, const GridAsked& asked, int packs, int panels) {
    Cell& cell = grid.cells[grid.place(packs, panels)];
    if (cell.timed) return;
    const auto ends = runs.ends(packs, panels, asked.threads);
    grid.outages_run += ends.size();
    cell.figures = runs.members().figures(ends, asked.goal);
    cell.timed = true;
}

}  // namespace sizing
