#include "sizing/member_runs.hpp"

#include <algorithm>
#include <array>
#include <iterator>
#include <map>

#include "abreast/own.hpp"
#include "outage/banks.hpp"
#include "outage/in_threads.hpp"
#include "outage/work.hpp"

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
        for (std::size_t i = 0; i < ends.size(); ++i)
            (ends[i].survives ? fewest_ : too_few_)[i] = packs;
    }

    // Chance with so many.
    double with(int packs) {
        if (open_ended_) {
            auto& ends = timed_[packs];
            if (ends.empty()) ends = runs_.ends(packs, runs_.members().world().panels(), threads_);
            return runs_.members().share_that_outlasts(ends);
        }
        outage::for_each_number(runs_.members().blocks(), threads_,
                                [&](int block) { run(block, packs); });
        const auto last = std::ranges::count_if(fewest_, [&](int few) { return few <= packs; });
        return double(last) / double(fewest_.size());
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

    void run(int block, int packs) {
        const auto first = std::size_t(block) * std::size_t(chance::lanes);
        const int panels = runs_.members().world().panels();
        std::vector<MemberJob> jobs;
        for (int lane = 0; lane < chance::lanes; ++lane) {
            const std::size_t i = first + std::size_t(lane);
            if (fewest_[i] > packs && too_few_[i] < packs)
                jobs.push_back({.lane = lane, .packs = packs, .panels = panels});
        }
        if (jobs.empty()) return;
        const auto ends = runs_.run(block, jobs);
        for (std::size_t job = 0; job < jobs.size(); ++job) {
            const std::size_t i = first + std::size_t(jobs[job].lane);
            (ends[job].survives ? fewest_ : too_few_)[i] = packs;
        }
    }
};

// The fewest from `from` on, which is at least 1.
PacksEnough fewest(Lasting& lasting, Probability goal, int from, int most) {
    const auto enough = [&](double share) { return share >= goal.value() - rounding; };
    int too_few = from - 1;
    int packs = std::min(from, most);
    double share = lasting.with(packs);
    while (!enough(share) && packs < most) {
        too_few = packs;
        packs = std::min(most, from - 1 + 2 * (packs - from + 1));
        share = lasting.with(packs);
    }
    if (!enough(share)) return {.packs = 0, .of = Probability(share)};
    while (packs - too_few > 1) {
        const int middle = (too_few + packs) / 2;
        (enough(lasting.with(middle)) ? packs : too_few) = middle;
    }
    return {.packs = packs, .of = Probability(lasting.with(packs))};
}

// Steps of all members that are held at once, of about 150 bytes each.
constexpr double most_kept = 0.8e6;

}  // namespace

std::size_t held_at_once(const chance::World& world) {
    const double reached = 0.5 * most_kept / outage::steps_of_a_run(world.ready());
    return static_cast<std::size_t>(std::clamp(reached, 1.0, double(chance::lanes)));
}

std::vector<MemberEnd> ends_of(const chance::World& world, std::span<const LivedJob> jobs) {
    const outage::Ready& ready = world.ready();
    std::vector<outage::PackKinds> kinds;
    std::vector<outage::Unit> units;
    std::vector<abreast::Outage> outages;
    kinds.reserve(jobs.size());
    units.reserve(jobs.size());
    for (const LivedJob& job : jobs) {
        kinds.push_back(outage::with_count(job.lived->kinds, job.packs));
        auto& unit = units.emplace_back(outage::unit_of(kinds.back(), ready.main_path));
        unit.inverter = job.lived->inverter;
        unit.main_fuse = ready.units[std::size_t(outage::End::likely)].main_fuse;
        outages.push_back({.unit = &unit,
                           .demand = job.lived->steps,
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
      kept_(members.count() * outage::steps_of_a_run(members.world().ready()) <= most_kept),
      lanes_(std::size_t(members.count())) {}

LivedJob MemberRuns::lived_of(int block, const MemberJob& job) {
    const chance::World& world = members_.world();
    const int number = block * chance::lanes + job.lane;
    const auto values = members_.values(number);
    auto& lane = lanes_[std::size_t(number)];
    if (!lane) {
        lane.emplace(world.lived(values, off_), world.panels());
        lane->sun = lane->lived.sun;
    }
    if (lane->panels != job.panels) {
        lane->sun = world.sun(values, job.panels);
        lane->panels = job.panels;
    }
    return {.lived = &lane->lived, .packs = job.packs, .sun = lane->sun};
}

// As many jobs of different lanes as may be held go side by side.
std::vector<MemberEnd> MemberRuns::run(int block, std::span<const MemberJob> jobs) {
    const chance::World& world = members_.world();
    const std::size_t at_once = kept_ ? std::size_t(chance::lanes) : held_at_once(world);
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
        if (kept_) continue;
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
    return fewest(lasting, goal, 1, most);
}

MorePacks more_packs(MemberRuns& runs, const std::vector<MemberEnd>& ends, Probability goal,
                     int most, unsigned threads) {
    const int now = runs.members().world().packs();
    Lasting lasting(runs, threads);
    lasting.take(ends, now);
    const auto enough = fewest(lasting, goal, now + 1, now + most);
    const int more = std::max(0, enough.packs - now);
    const int tried = more > 0 ? more : most;
    const auto with_them = runs.members().figures(lasting.ends(now + tried), goal);
    return {.more = more,
            .tried = tried,
            .of = enough.of,
            .interval = {.low = with_them.low, .high = with_them.high}};
}

}  // namespace sizing
