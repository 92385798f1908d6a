#include "sizing/ration.hpp"

#include <algorithm>
#include <functional>
#include <set>

#include "demand/demand.hpp"
#include "outage/told/load_uses.hpp"

namespace sizing {

namespace {

using namespace units;
constexpr int life_and_health = 1;

// Which loads are off, by their place in the scenario.
class Shed {
  public:
    explicit Shed(const MemberRuns& all_on)
        : all_on_(all_on), off_(all_on.members().world().ready().demand.loads.size(), false) {}

    void add(std::size_t load) { off_[load] = true; }

    [[nodiscard]] bool inverter() const { return all_on_.members().world().feeds_nothing(off_); }
    [[nodiscard]] MemberRuns runs() const { return all_on_.with_off(off_); }

  private:
    const MemberRuns& all_on_;
    chance::SwitchedOff off_;
};

std::vector<ShedLoad> all_loads(const outage::Ready& ready) {
    std::vector<ShedLoad> loads;
    for (const auto& use : outage::load_uses(ready.demand))
        loads.push_back({.load = loads.size(), .name = use.name, .spared = use.per_day});
    return loads;
}

}  // namespace

Ration ration(const chance::Members& members, Probability goal, unsigned threads) {
    const auto& ready = members.world().ready();
    const auto figures_of = [&](const Shed& shed) {
        return members.figures(shed.runs().ends(threads), goal);
    };
    const auto loads = all_loads(ready);
    const auto rank_of = [&](const ShedLoad& load) { return ready.demand.loads[load.load].rank; };
    std::set<int, std::greater<>> ranks;
    for (const auto& load : loads)
        ranks.insert(rank_of(load));
    MemberRuns all_on(members);
    Shed shed(all_on);
    Ration ration{.all_on = {.figures = members.figures(all_on.ends(threads), goal)}};
    const int last = ranks.empty() ? 0 : *ranks.rbegin();
    bool inverter_is_off = false;
    for (const int rank : ranks) {
        if (rank == last) break;
        std::vector<ShedLoad> off;
        std::ranges::copy_if(loads, std::back_inserter(off),
                             [&](const ShedLoad& load) { return rank_of(load) == rank; });
        for (const auto& load : off)
            shed.add(load.load);
        RationStep step{.figures = figures_of(shed)};
        step.inverter = shed.inverter() && !inverter_is_off;
        inverter_is_off = shed.inverter();
        for (const auto& load : off)
            step.spared += load.spared;
        step.off = std::move(off);
        ration.steps.push_back(std::move(step));
    }
    std::ranges::copy_if(loads, std::back_inserter(ration.kept),
                         [&](const ShedLoad& load) { return rank_of(load) == last; });
    ration.vital = last == life_and_health;
    return ration;
}

Ladder ration_ladder(const chance::Members& members, int most_packs, Probability goal,
                     unsigned threads) {
    return ration_ladder(MemberRuns(members), most_packs, goal, threads);
}

Ladder ration_ladder(const MemberRuns& all_on, int most_packs, Probability goal, unsigned threads) {
    const auto& members = all_on.members();
    const auto& ready = members.world().ready();
    Ladder ladder;
    for (auto& load : all_loads(ready)) {
        const int rank = ready.demand.loads[load.load].rank;
        if (rank > life_and_health)
            ladder.rungs.push_back({.off = std::move(load), .priority = rank});
    }
    std::ranges::stable_sort(ladder.rungs, [](const Rung& a, const Rung& b) {
        return a.priority != b.priority ? a.priority > b.priority : a.off.spared > b.off.spared;
    });
    Shed so_far(all_on);
    int most = most_packs;  // a load less never asks for a pack more
    std::vector<int> enough;
    for (auto& rung : ladder.rungs) {
        so_far.add(rung.off.load);
        auto runs = so_far.runs();
        const auto ends = runs.ends(threads);
        rung.figures = members.figures(ends, goal);
        rung.packs_so_far = fewest_packs(runs, ends, goal, most, enough, threads);
        if (rung.packs_so_far > 0) most = rung.packs_so_far;
    }
    return ladder;
}

}  // namespace sizing
