#include "sizing/builds/grid.hpp"

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
        runs_.keep(block);
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
        runs_.let_go(block);
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

Grid empty_grid(const GridAsked& asked) {
    Grid grid{.most_packs = asked.most_packs, .most_panels = asked.most_panels, .cells = {}};
    for (int packs = 1; packs <= asked.most_packs; ++packs)
        for (int panels = 0; panels <= asked.most_panels; ++panels)
            grid.cells.push_back({.packs = packs, .panels = panels, .figures = {}});
    return grid;
}

// Each build by itself, for where nobody knows how long the outage lasts every member's time
// counts; a member that lasts as long as is looked at is taken to do so with more packs. The first
// block alone: the length is averaged, so that a chance is known better than by counting.
class EveryBuild {
  public:
    EveryBuild(const chance::Members& members, const GridAsked& asked)
        : members_(members),
          asked_(asked),
          ends_(empty_grid(asked).cells.size(),
                std::vector<MemberEnd>(std::size_t(chance::lanes))) {}

    [[nodiscard]] const std::vector<MemberEnd>& ends(std::size_t cell) const { return ends_[cell]; }

    // For the lanes from `first` to before `last`; others may be run at once.
    //   gives   outages run
    std::size_t run(const Grid& grid, std::size_t first, std::size_t last) {
        const auto& world = members_.world();
        std::vector<chance::Lived> lived;
        std::vector<std::vector<abreast::Need>> needs;
        for (std::size_t lane = first; lane < last; ++lane) {
            lived.push_back(world.lived(members_.values(int(lane))));
            needs.push_back(needs_of(world, lived.back()));
        }
        std::size_t run = 0;
        for (int panels = 0; panels <= asked_.most_panels; ++panels) {
            std::vector<std::vector<outage::SunChange>> suns;
            for (const auto& of : lived)
                suns.push_back(world.sun(of.light, panels));
            for (int packs = 1; packs <= asked_.most_packs; ++packs) {
                auto& ends = ends_[grid.place(packs, panels)];
                for (std::size_t lane = first; packs > 1 && lane < last; ++lane)
                    ends[lane] = ends_[grid.place(packs - 1, panels)][lane];
                run += run_build(first, packs, lived, needs, suns, ends);
            }
        }
        return run;
    }

  private:
    const chance::Members& members_;
    const GridAsked& asked_;
    std::vector<std::vector<MemberEnd>> ends_;  // by cell, by lane

    // Of those that have not lasted with a pack less.
    std::size_t run_build(std::size_t first, int packs, const std::vector<chance::Lived>& lived,
                          const std::vector<std::vector<abreast::Need>>& needs,
                          const std::vector<std::vector<outage::SunChange>>& suns,
                          std::vector<MemberEnd>& ends) const {
        std::vector<LivedJob> jobs;
        std::vector<std::size_t> lanes;
        for (std::size_t i = 0; i < lived.size(); ++i) {
            if (ends[first + i].survives) continue;
            jobs.push_back({.lived = &lived[i], .needs = needs[i], .packs = packs, .sun = suns[i]});
            lanes.push_back(first + i);
        }
        if (jobs.empty()) return 0;
        const auto ended = ends_of(members_.world(), jobs);
        for (std::size_t job = 0; job < jobs.size(); ++job)
            ends[lanes[job]] = ended[job];
        return jobs.size();
    }
};

// Tells how much is done, and hears whether to go on.
class Told {
  public:
    Told(const GridAsked& asked, int parts) : asked_(asked), parts_(parts) {}

    [[nodiscard]] bool stopped() const { return stopped_; }
    void one_more() {
        if (!asked_.progress) return;
        const std::scoped_lock lock(telling_);
        if (!asked_.progress(++done_ / double(parts_))) stopped_ = true;
    }

  private:
    const GridAsked& asked_;
    int parts_;
    int done_ = 0;
    std::mutex telling_;
    std::atomic<bool> stopped_{false};
};

// Part by part, until all are run or it is stopped.
//   run_part   gives the outages that it ran
//   gives      all of them
std::size_t run_parts(int parts, unsigned threads, Told& told,
                      const std::function<std::size_t(int)>& run_part) {
    std::atomic<std::size_t> run{0};
    outage::for_each_number(parts, threads, [&](int part) {
        if (told.stopped()) return;
        run += run_part(part);
        told.one_more();
    });
    return run;
}

std::optional<Grid> open_ended_grid(const chance::Members& members, const GridAsked& asked) {
    constexpr std::size_t most_together = 16;  // so that some processors have work
    const std::size_t together = std::min(most_together, held_at_once(members.world()));
    const int parts = int((std::size_t(chance::lanes) + together - 1) / together);
    Grid grid = empty_grid(asked);
    EveryBuild builds(members, asked);
    Told told(asked, parts);
    grid.outages_run = run_parts(parts, asked.threads, told, [&](int part) {
        const std::size_t first = std::size_t(part) * together;
        return builds.run(grid, first, std::min(first + together, std::size_t(chance::lanes)));
    });
    if (told.stopped()) return std::nullopt;
    for (std::size_t cell = 0; cell < grid.cells.size(); ++cell)
        grid.cells[cell].figures = members.figures(builds.ends(cell), asked.goal);
    return grid;
}

}  // namespace

std::optional<Grid> grid_of(MemberRuns& runs, const GridAsked& asked) {
    assert(asked.most_packs >= 1 && asked.most_panels >= 0);
    const auto& members = runs.members();
    if (members.world().ready().outage.open_ended) return open_ended_grid(members, asked);
    Staircases staircases(runs, asked);
    Told told(asked, members.blocks());
    Grid grid = empty_grid(asked);
    grid.outages_run = run_parts(members.blocks(), asked.threads, told,
                                 [&](int block) { return staircases.walk(block); });
    if (told.stopped()) return std::nullopt;
    std::vector<MemberEnd> ends(std::size_t(members.count()));
    for (Cell& cell : grid.cells) {
        for (std::size_t i = 0; i < ends.size(); ++i)
            ends[i].survives = staircases.lasts(i, cell.packs, cell.panels);
        cell.figures = members.figures(ends, asked.goal);
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
