#include "sizing/builds/sweep.hpp"

#include <algorithm>
#include <atomic>
#include <mutex>

#include "outage/in_threads.hpp"

namespace sizing {

namespace {

using namespace units;

// The weathers of one block: what each gives, and each number of panels worked out when asked.
class BlockSkies {
  public:
    BlockSkies(const Design& design, std::uint64_t seed, int first, int count) : design_(design) {
        for (int i = 0; i < count; ++i) {
            weathers_.push_back(design.skies.weather(seed, first + i));
        }
        columns_.resize(weathers_.size());
        panels_.assign(weathers_.size(), -1);
    }

    // Holds until the same sequence is asked for another number of panels.
    std::span<const double> sun(std::size_t sequence, int panels) {
        if (panels_[sequence] != panels) {
            design_.skies.offered(weathers_[sequence], panels, columns_[sequence]);
            panels_[sequence] = panels;
        }
        return columns_[sequence];
    }

  private:
    const Design& design_;
    std::vector<Weather> weathers_;
    std::vector<std::vector<double>> columns_;
    std::vector<int> panels_;
};

// One sequence on its way down the staircase: with fewer and fewer panels, the fewest packs that
// last. More packs and more panels never last less long, so a step that lasts goes down in panels
// and one that fails goes up in packs. method.md (3)
struct Walker {
    std::size_t sequence = 0;  // within the block
    int packs = 1;
    int panels = 0;
};

// Endings of single cells of one sequence that were met on the way.
struct Met {
    std::vector<Duration> lasts;  // by packs, within them by panels; negative: not run
};

class BlockSweep {
  public:
    BlockSweep(const Design& design, const SweepAsked& asked, int first, int count)
        : design_(design),
          count_(count),
          timed_(std::clamp(asked.timed - first, 0, count)),
          skies_(design, asked.seed, first, count),
          fewest_(cells_across() * std::size_t(count), design.most_packs + 1) {
        met_.resize(std::size_t(timed_));
        for (auto& met : met_)
            met.lasts.assign(std::size_t(design.most_packs) * cells_across(), -1.0 * second);
    }

    void run() {
        walk();
        time_the_failures();
    }

    [[nodiscard]] int fewest(int sequence, int panels) const {
        return fewest_[std::size_t(sequence) * cells_across() + std::size_t(panels)];
    }
    [[nodiscard]] int timed() const { return timed_; }
    [[nodiscard]] Duration lasts(int sequence, int packs, int panels) const {
        if (fewest(sequence, panels) <= packs) return design_.ready->outage.lasts;
        return met_[std::size_t(sequence)].lasts[index(packs, panels)];
    }
    [[nodiscard]] const abreast::LaneCost& cost() const { return cost_; }
    [[nodiscard]] std::size_t outages_run() const { return outages_run_; }

  private:
    const Design& design_;
    int count_;
    int timed_;
    BlockSkies skies_;
    std::vector<int> fewest_;  // by sequence, within it by panels; most_packs + 1: none
    std::vector<Met> met_;
    abreast::LaneCost cost_;
    std::size_t outages_run_ = 0;

    [[nodiscard]] std::size_t cells_across() const { return std::size_t(design_.most_panels) + 1; }
    [[nodiscard]] std::size_t index(int packs, int panels) const {
        return std::size_t(packs - 1) * cells_across() + std::size_t(panels);
    }

    // Runs a batch of cells, one a sequence, and notes how each ended.
    std::array<abreast::LaneEnding, abreast::lanes> run(std::span<const Walker> batch) {
        std::array<abreast::LaneJob, abreast::lanes> jobs;
        std::array<abreast::LaneEnding, abreast::lanes> endings;
        for (std::size_t i = 0; i < batch.size(); ++i)
            jobs[i] = {.packs = batch[i].packs,
                       .sun = skies_.sun(batch[i].sequence, batch[i].panels)};
        run_outages(design_, std::span(jobs).first(batch.size()),
                    std::span(endings).first(batch.size()), &cost_);
        outages_run_ += batch.size();
        for (std::size_t i = 0; i < batch.size(); ++i)
            if (batch[i].sequence < met_.size())
                met_[batch[i].sequence].lasts[index(batch[i].packs, batch[i].panels)] =
                    endings[i].lasts;
        return endings;
    }

    void walk() {
        if (design_.most_panels == 0) return;
        std::vector<Walker> walkers;
        for (int i = 0; i < count_; ++i)
            walkers.push_back({.sequence = std::size_t(i), .panels = design_.most_panels});
        while (!walkers.empty()) {
            const auto endings = run(walkers);
            for (std::size_t i = 0; i < walkers.size(); ++i) {
                Walker& walker = walkers[i];
                if (endings[i].survives) {
                    fewest_[walker.sequence * cells_across() + std::size_t(walker.panels)] =
                        walker.packs;
                    --walker.panels;
                } else {
                    ++walker.packs;
                }
            }
            std::erase_if(walkers, [&](const Walker& walker) {
                return walker.panels < 1 || walker.packs > design_.most_packs;
            });
        }
    }

    // How long it lasts in the cells that fail and were not met by the walk.
    void time_the_failures() {
        std::vector<Walker> batch;
        const auto flush = [&] {
            if (!batch.empty()) (void)run(batch);
            batch.clear();
        };
        for (int panels = 1; panels <= design_.most_panels; ++panels)
            for (int packs = 1; packs <= design_.most_packs; ++packs) {
                for (int i = 0; i < timed_; ++i)
                    if (fewest(i, panels) > packs &&
                        met_[std::size_t(i)].lasts[index(packs, panels)] < Duration{})
                        batch.push_back(
                            {.sequence = std::size_t(i), .packs = packs, .panels = panels});
                flush();
            }
    }
};

// Without panels every weather is the same.
std::vector<abreast::LaneEnding> without_panels(const Design& design, abreast::LaneCost& cost) {
    std::vector<abreast::LaneEnding> endings;
    std::vector<abreast::LaneJob> jobs;
    for (int packs = 1; packs <= design.most_packs; packs += abreast::lanes) {
        jobs.clear();
        for (int i = packs; i < packs + abreast::lanes && i <= design.most_packs; ++i)
            jobs.push_back({.packs = i});
        std::array<abreast::LaneEnding, abreast::lanes> ended;
        run_outages(design, jobs, std::span(ended).first(jobs.size()), &cost);
        endings.insert(endings.end(), ended.begin(), ended.begin() + std::ptrdiff_t(jobs.size()));
    }
    return endings;
}

void add(abreast::LaneCost& to, const abreast::LaneCost& more) {
    to.steps += more.steps;
    to.one_by_one += more.one_by_one;
    to.by_clock += more.by_clock;
}

// Of one ending that all weathers have.
SweptCell cell_of(const abreast::LaneEnding& ending, int packs) {
    const Probability certain(ending.survives ? 1.0 : 0.0);
    return {.packs = packs,
            .panels = 0,
            .chance = {.of = certain, .low = certain, .high = certain, .outages = 1},
            .lasts = Spread{ending.lasts, ending.lasts, ending.lasts}};
}

SweptCell cell_of(const std::vector<std::optional<BlockSweep>>& swept, int sequences, int packs,
             int panels) {
    SweptCell cell{.packs = packs, .panels = panels};
    int lasted = 0;
    std::vector<Duration> times;
    for (int i = 0; i < sequences; ++i) {
        const auto& block = *swept[std::size_t(i / abreast::lanes)];
        if (block.fewest(i % abreast::lanes, panels) <= packs) ++lasted;
        if (i % abreast::lanes < block.timed())
            times.push_back(block.lasts(i % abreast::lanes, packs, panels));
    }
    cell.chance = counted(lasted, sequences);
    if (!times.empty()) cell.lasts = spread_of(times);
    return cell;
}

}  // namespace

std::optional<Sweep> sweep(const Design& design, const SweepAsked& asked) {
    const int sequences =
        design.most_panels > 0 ? std::clamp(asked.sequences, 1, design.most_weathers) : 1;
    const int blocks = (sequences + abreast::lanes - 1) / abreast::lanes;
    std::vector<std::optional<BlockSweep>> swept(static_cast<std::size_t>(blocks));
    std::mutex telling;
    int done = 0;
    std::atomic<bool> stopped{false};
    outage::for_each_number(blocks, asked.threads, [&](int block) {
        if (stopped) return;
        const int first = block * abreast::lanes;
        auto& mine = swept[static_cast<std::size_t>(block)];
        mine.emplace(design, asked, first, std::min(abreast::lanes, sequences - first));
        mine->run();
        if (!asked.progress) return;
        const std::scoped_lock lock(telling);
        if (!asked.progress(++done / static_cast<double>(blocks))) stopped = true;
    });
    if (stopped) return std::nullopt;

    Sweep result{.most_packs = design.most_packs, .most_panels = design.most_panels};
    const auto dark = without_panels(design, result.cost);
    result.outages_run += dark.size();
    for (const auto& block : swept) {
        add(result.cost, block->cost());
        result.outages_run += block->outages_run();
    }
    for (int packs = 1; packs <= design.most_packs; ++packs)
        for (int panels = 0; panels <= design.most_panels; ++panels)
            result.cells.push_back(panels == 0 ? cell_of(dark[std::size_t(packs - 1)], packs)
                                               : cell_of(swept, sequences, packs, panels));
    return result;
}

Suns suns_in(const Design& design, int panels, int first, int sequences, std::uint64_t seed,
             unsigned threads) {
    Suns suns(static_cast<std::size_t>(sequences));
    const int blocks = (sequences + abreast::lanes - 1) / abreast::lanes;
    outage::for_each_number(blocks, threads, [&](int block) {
        for (int i = block * abreast::lanes; i < std::min(sequences, (block + 1) * abreast::lanes);
             ++i)
            design.skies.offered(design.skies.weather(seed, first + i), panels,
                                 suns[std::size_t(i)]);
    });
    return suns;
}

std::vector<abreast::LaneEnding> endings_under(const Design& design, int packs, const Suns& suns,
                                               unsigned threads) {
    std::vector<abreast::LaneEnding> all(suns.size());
    const int sequences = static_cast<int>(suns.size());
    const int blocks = (sequences + abreast::lanes - 1) / abreast::lanes;
    outage::for_each_number(blocks, threads, [&](int block) {
        const int from = block * abreast::lanes;
        const int count = std::min(abreast::lanes, sequences - from);
        std::array<abreast::LaneJob, abreast::lanes> jobs;
        for (int i = 0; i < count; ++i)
            jobs[std::size_t(i)] = {.packs = packs, .sun = suns[std::size_t(from + i)]};
        run_outages(design, std::span(jobs).first(std::size_t(count)),
                    std::span(all).subspan(std::size_t(from), std::size_t(count)));
    });
    return all;
}

int lasted_under(const Design& design, int packs, const Suns& suns, unsigned threads) {
    const auto all = endings_under(design, packs, suns, threads);
    return static_cast<int>(std::ranges::count_if(all, &abreast::LaneEnding::survives));
}

int lasted_in(const Design& design, int packs, int panels, int first, int sequences,
              std::uint64_t seed, unsigned threads) {
    constexpr int at_once = 4096;  // the suns of as many are held
    int lasted = 0;
    for (int done = 0; done < sequences; done += at_once)
        lasted += lasted_under(design, packs,
                               suns_in(design, panels, first + done,
                                       std::min(at_once, sequences - done), seed, threads),
                               threads);
    return lasted;
}

}  // namespace sizing
