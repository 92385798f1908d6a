#include "sizing/ration.hpp"

#include <algorithm>
#include <functional>
#include <set>

#include "demand/demand.hpp"
#include "outage/load_uses.hpp"

namespace sizing {

namespace {

using namespace units;
constexpr int life_and_health = 1;

// Which loads are off, by their place in the scenario.
class Shed {
  public:
    explicit Shed(const chance::Members& members)
        : members_(members), off_(members.world().ready().demand.loads.size(), false) {}

    void add(std::size_t load) { off_[load] = true; }

    [[nodiscard]] bool inverter() const { return members_.world().feeds_nothing(off_); }
    [[nodiscard]] MemberRuns runs() const { return MemberRuns(members_, off_); }

  private:
    const chance::Members& members_;
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
    Shed shed(members);
    Ration ration{.all_on = {.figures = figures_of(shed)}};
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
    Shed so_far(members);
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
