#include "sizing/member_runs.hpp"

#include <algorithm>
#include <array>
#include <iterator>
#include <map>
#include <mutex>
#include <thread>

#include "outage/clock/banks.hpp"
#include "outage/clock/work.hpp"
#include "outage/in_threads.hpp"

namespace sizing {

namespace {

using namespace units;
using chance::MemberEnd;
using chance::Members;

constexpr double rounding = 1e-9;

// The ends of all members with a number of packs, as far as a chance needs them; each is run only
// where it is not known.
class Lasting {
  public:
    Lasting(MemberRuns& runs, unsigned threads)
        : runs_(runs),
          threads_(threads),
          open_ended_(runs.members().world().ready().outage.open_ended),
          fewest_(std::size_t(runs.members().count()), unknown),
          too_few_(fewest_.size(), 0) {}

    // How they end with so many packs.
    void take(const std::vector<MemberEnd>& ends, int packs) {
        if (open_ended_) timed_[packs] = ends;
        for (std::size_t i = 0; i < ends.size(); ++i) {
            if (ends[i].survives)
                fewest_[i] = std::min(fewest_[i], packs);
            else
                too_few_[i] = std::max(too_few_[i], packs);
        }
    }

    // So many packs are enough for each, as far as another knew.
    void take(const std::vector<int>& enough) {
        for (std::size_t i = 0; i < enough.size(); ++i)
            fewest_[i] = std::min(fewest_[i], enough[i]);
    }
    [[nodiscard]] const std::vector<int>& known_enough() const { return fewest_; }

    // Chance with so many.
    double with(int packs) {
        if (open_ended_) return timed(packs);
        (void)decided(packs, 1.0);
        return double(lasting(packs)) / double(fewest_.size());
    }

    // Whether the chance with so many meets the goal; runs no more blocks than that takes.
    bool meets(Probability goal, int packs) {
        const double enough = goal.value() - rounding;
        return open_ended_ ? timed(packs) >= enough : decided(packs, enough);
    }

    // With so many, asked for before: which of them last; when the others end is known only where
    // nobody knows how long the outage lasts.
    std::vector<MemberEnd> ends(int packs) const {
        if (open_ended_) return timed_.at(packs);
        std::vector<MemberEnd> ends(fewest_.size());
        for (std::size_t i = 0; i < ends.size(); ++i)
            ends[i].survives = fewest_[i] <= packs;
        return ends;
    }

  private:
    static constexpr int unknown = 1 << 20;

    MemberRuns& runs_;
    unsigned threads_;
    bool open_ended_;
    std::map<int, std::vector<MemberEnd>> timed_;  // by packs, where it is open-ended
    std::vector<int> fewest_;                      // known to be enough
    std::vector<int> too_few_;                     // most that are known not to be

    // How many members that were not known last, and how many do not.
    struct Known {
        std::ptrdiff_t last = 0;
        std::ptrdiff_t fail = 0;
    };

    double timed(int packs) {
        auto& ends = timed_[packs];
        if (ends.empty()) ends = runs_.ends(packs, runs_.members().world().panels(), threads_);
        return runs_.members().share_that_outlasts(ends);
    }

    [[nodiscard]] std::ptrdiff_t lasting(int packs) const {
        return std::ranges::count_if(fewest_, [&](int few) { return few <= packs; });
    }

    // Whether at least this share lasts; runs blocks until that is certain, some at a time whatever
    // the number of threads, so that what is known afterwards does not hang on it.
    bool decided(int packs, double share) {
        constexpr int at_a_time = 4;
        const auto all = double(fewest_.size());
        const int blocks = runs_.members().blocks();
        auto last = lasting(packs);
        auto fail = std::ranges::count_if(too_few_, [&](int few) { return few >= packs; });
        for (int done = 0; done < blocks; done += at_a_time) {
            const bool certain = double(last) / all >= share || double(fail) / all > 1.0 - share;
            if (share < 1.0 && certain) break;
            const int count = std::min(at_a_time, blocks - done);
            std::array<Known, at_a_time> known{};
            outage::for_each_number(count, threads_,
                                    [&](int i) { known[std::size_t(i)] = run(done + i, packs); });
            for (const Known& of_block : known) {
                last += of_block.last;
                fail += of_block.fail;
            }
        }
        return double(last) / all >= share;
    }

    Known run(int block, int packs) {
        const auto first = std::size_t(block) * std::size_t(chance::lanes);
        const int panels = runs_.members().world().panels();
        std::vector<MemberJob> jobs;
        for (int lane = 0; lane < chance::lanes; ++lane) {
            const std::size_t i = first + std::size_t(lane);
            if (fewest_[i] > packs && too_few_[i] < packs)
                jobs.push_back({.lane = lane, .packs = packs, .panels = panels});
        }
        if (jobs.empty()) return {};
        const auto ends = runs_.run(block, jobs);
        for (std::size_t job = 0; job < jobs.size(); ++job) {
            const std::size_t i = first + std::size_t(jobs[job].lane);
            (ends[job].survives ? fewest_ : too_few_)[i] = packs;
        }
        const auto lasted = std::ranges::count(ends, true, &MemberEnd::survives);
        return {.last = lasted, .fail = std::ssize(ends) - lasted};
    }
};

// The fewest from `from` on, which is at least 1.
//   try_first   a number near which it may lie, at least `from`
//   gives       0: not even the most do
int fewest(Lasting& lasting, Probability goal, int from, int most, int try_first) {
    int too_few = from - 1;
    int packs = std::min(try_first, most);
    bool enough = lasting.meets(goal, packs);
    while (!enough && packs < most) {
        too_few = packs;
        packs = std::min(most, from - 1 + 2 * (packs - from + 1));
        enough = lasting.meets(goal, packs);
    }
    if (!enough) return 0;
    while (packs - too_few > 1) {
        const int middle = (too_few + packs) / 2;
        (lasting.meets(goal, middle) ? packs : too_few) = middle;
    }
    return packs;
}

// Steps of all members that are held at once, of about 150 bytes each.
constexpr double most_kept = 0.8e6;

outage::Unit unit_with(const chance::World& world, const chance::Lived& lived,
                       const outage::PackKinds& kinds) {
    const outage::Ready& ready = world.ready();
    auto unit = outage::unit_of(kinds, ready.main_path);
    unit.inverter = lived.inverter;
    unit.main_fuse = ready.units[std::size_t(outage::End::likely)].main_fuse;
    return unit;
}

bool fits(const chance::World& world, double members) {
    return members * outage::steps_of_a_run(world.ready()) <= most_kept;
}

}  // namespace

// Of each kind of pack, by how many there are in all.
class CountsOfKinds {
  public:
    explicit CountsOfKinds(const outage::PackKinds& kinds) : kinds_(kinds) {}

    const std::vector<int>& with(int packs) {
        const std::scoped_lock lock(making_);
        const auto [found, added] = made_.try_emplace(packs);
        if (added)
            for (const auto& kind : outage::with_count(kinds_, packs))
                found->second.push_back(kind.count);
        return found->second;
    }

  private:
    outage::PackKinds kinds_;
    std::mutex making_;
    std::map<int, std::vector<int>> made_;
};

std::size_t held_at_once(const chance::World& world) {
    const double reached = 0.5 * most_kept / outage::steps_of_a_run(world.ready());
    return static_cast<std::size_t>(std::clamp(reached, 1.0, double(chance::lanes)));
}

std::vector<abreast::Need> needs_of(const chance::World& world, const chance::Lived& lived) {
    const outage::Ready& ready = world.ready();
    auto unit = outage::unit_of(outage::with_count(lived.kinds, 1), ready.main_path);
    unit.inverter = lived.inverter;
    return abreast::needs_of(unit, lived.steps);
}

std::vector<MemberEnd> ends_of(const chance::World& world, std::span<const LivedJob> jobs) {
    const outage::Ready& ready = world.ready();
    std::vector<outage::PackKinds> kinds;
    std::vector<outage::Unit> units;
    std::vector<abreast::Outage> outages;
    kinds.reserve(jobs.size());
    units.reserve(jobs.size());
    for (const LivedJob& job : jobs) {
        const outage::Unit* unit = job.unit;
        if (unit == nullptr) {
            kinds.push_back(outage::with_count(job.lived->kinds, job.packs));
            unit = &units.emplace_back(unit_with(world, *job.lived, kinds.back()));
        }
        outages.push_back({.unit = unit,
                           .demand = job.lived->steps,
                           .needs = job.needs,
                           .most = job.most,
                           .pattern = job.pattern,
                           .sun = job.sun,
                           .guarded = outage::or_none(job.lived->guarded)});
    }
    std::vector<abreast::OwnEnding> endings(jobs.size());
    abreast::run_own(outages, ready.outage.lasts, ready.midnight, endings);
    std::vector<MemberEnd> ends;
    for (const auto& ending : endings)
        ends.push_back(
            {.lasts = ending.lasts, .survives = ending.survives, .limited_by = ending.limited_by});
    return ends;
}

MemberRuns::MemberRuns(const Members& members, chance::SwitchedOff off)
    : members_(members),
      off_(std::move(off)),
      counts_(std::make_shared<CountsOfKinds>(members.world().ready().kinds)),
      all_kept_(fits(members.world(), members.count())),
      blocks_kept_(fits(members.world(),
                        double(chance::lanes) * std::max(1U, std::thread::hardware_concurrency()))),
      kept_(std::size_t(members.blocks()), 0),
      lanes_(std::size_t(members.count())) {}

MemberRuns MemberRuns::with_off(chance::SwitchedOff off) const {
    MemberRuns made(members_, std::move(off));
    made.like_ = this;
    return made;
}

void MemberRuns::keep(int block) {
    kept_[std::size_t(block)] = blocks_kept_ ? 1 : 0;
}

void MemberRuns::let_go(int block) {
    kept_[std::size_t(block)] = 0;
    if (all_kept_) return;
    for (int lane = 0; lane < chance::lanes; ++lane)
        lanes_[std::size_t(block * chance::lanes + lane)].reset();
}

MemberRuns::Lane MemberRuns::made(int number) const {
    const chance::World& world = members_.world();
    const auto values = members_.values(number);
    const auto* like = like_ != nullptr && like_->lanes_[std::size_t(number)]
                           ? &like_->lanes_[std::size_t(number)]->lived
                           : nullptr;
    Lane lane{.lived = like ? world.lived(values, off_, {*like, values, like_->off_})
                            : world.lived(values, off_),
              .needs = {},
              .panels = world.panels()};
    lane.needs = needs_of(world, lane.lived);
    lane.most = abreast::most_of(lane.needs);
    lane.sun = std::move(lane.lived.sun);
    const auto first = lanes_.begin() + std::ptrdiff_t(number / chance::lanes) * chance::lanes;
    for (const auto& other : std::span(first, chance::lanes))
        if (other && abreast::switch_together(other->lived.steps, lane.lived.steps)) {
            lane.pattern = other->pattern;
            return lane;
        }
    lane.pattern = std::make_shared<const char>();
    return lane;
}

// A unit of the same kinds as before differs in its counts alone.
void MemberRuns::take_packs(Lane& lane, int packs) const {
    if (lane.packs == packs) return;
    const auto& counts = counts_->with(packs);
    const bool same_kinds =
        lane.packs > 0 &&
        std::ranges::equal(counts, counts_->with(lane.packs),
                           [](int now, int before) { return (now > 0) == (before > 0); });
    lane.packs = packs;
    if (!same_kinds) {
        lane.unit =
            unit_with(members_.world(), lane.lived, outage::with_count(lane.lived.kinds, packs));
        return;
    }
    std::size_t bank = 0;
    for (const int count : counts) {
        if (count == 0) continue;
        (bank == 0 ? lane.unit.bank : lane.unit.others[bank - 1]).count = count;
        ++bank;
    }
}

LivedJob MemberRuns::lived_of(int block, const MemberJob& job) {
    const int number = block * chance::lanes + job.lane;
    auto& lane = lanes_[std::size_t(number)];
    if (!lane) lane.emplace(made(number));
    if (lane->panels != job.panels) {
        lane->sun = members_.world().sun(lane->lived.light, job.panels);
        lane->panels = job.panels;
    }
    take_packs(*lane, job.packs);
    return {.lived = &lane->lived,
            .needs = lane->needs,
            .most = lane->most,
            .pattern = lane->pattern.get(),
            .packs = job.packs,
            .sun = lane->sun,
            .unit = &lane->unit};
}

// As many jobs of different lanes as may be held go side by side.
std::vector<MemberEnd> MemberRuns::run(int block, std::span<const MemberJob> jobs) {
    const chance::World& world = members_.world();
    const bool kept = all_kept_ || kept_[std::size_t(block)] != 0;
    const std::size_t at_once = kept ? std::size_t(chance::lanes) : held_at_once(world);
    std::vector<MemberEnd> ends;
    ends.reserve(jobs.size());
    while (ends.size() < jobs.size()) {
        auto together = jobs.subspan(ends.size());
        std::array<bool, chance::lanes> taken{};
        std::size_t count = 0;
        while (count < std::min(together.size(), at_once) &&
               !taken[std::size_t(together[count].lane)])
            taken[std::size_t(together[count++].lane)] = true;
        together = together.first(count);
        std::vector<LivedJob> lived;
        for (const MemberJob& job : together)
            lived.push_back(lived_of(block, job));
        std::ranges::copy(ends_of(world, lived), std::back_inserter(ends));
        if (kept) continue;
        for (const MemberJob& job : together)
            lanes_[std::size_t(block * chance::lanes + job.lane)].reset();
    }
    return ends;
}

std::vector<MemberEnd> MemberRuns::ends(int packs, int panels, unsigned threads) {
    std::vector<MemberEnd> all(std::size_t(members_.count()));
    outage::for_each_number(members_.blocks(), threads, [&](int block) {
        std::vector<MemberJob> jobs;
        for (int lane = 0; lane < chance::lanes; ++lane)
            jobs.push_back({.lane = lane, .packs = packs, .panels = panels});
        const auto ends = run(block, jobs);
        std::ranges::copy(ends, all.begin() + std::ptrdiff_t(block) * chance::lanes);
    });
    return all;
}

std::vector<MemberEnd> MemberRuns::ends(unsigned threads) {
    return ends(members_.world().packs(), members_.world().panels(), threads);
}

PacksEnough fewest_packs(MemberRuns& runs, Probability goal, int most, unsigned threads) {
    Lasting lasting(runs, threads);
    const int packs = fewest(lasting, goal, 1, most, 1);
    return {.packs = packs, .of = Probability(lasting.with(packs > 0 ? packs : most))};
}

int fewest_packs(MemberRuns& runs, const std::vector<MemberEnd>& ends, Probability goal, int most,
                 std::vector<int>& enough, unsigned threads) {
    const int now = runs.members().world().packs();
    Lasting lasting(runs, threads);
    lasting.take(enough);
    lasting.take(ends, now);
    const int packs = fewest(lasting, goal, 1, most, now);
    enough = lasting.known_enough();
    return packs;
}

MorePacks more_packs(MemberRuns& runs, const std::vector<MemberEnd>& ends, Probability goal,
                     int most, unsigned threads) {
    const int now = runs.members().world().packs();
    Lasting lasting(runs, threads);
    lasting.take(ends, now);
    const int more = std::max(0, fewest(lasting, goal, now + 1, now + most, now + 1) - now);
    const int tried = more > 0 ? more : most;
    const Probability of(lasting.with(now + tried));
    const auto with_them = runs.members().figures(lasting.ends(now + tried), goal);
    return {.more = more,
            .tried = tried,
            .of = of,
            .interval = {.low = with_them.low, .high = with_them.high}};
}

}  // namespace sizing
