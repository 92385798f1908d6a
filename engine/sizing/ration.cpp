#include "sizing/ration.hpp"

#include <algorithm>
#include <functional>
#include <set>

#include "outage/clock.hpp"
#include "outage/demand.hpp"

namespace sizing {

namespace {

using namespace units;
using outage::End;

constexpr outage::Keep to_the_first_failure{.trace = false, .after_failure = false};
constexpr int life_and_health = 1;

// Which loads are off, by their place in the scenario.
class Shed {
  public:
    explicit Shed(const outage::Ready& ready)
        : ready_(ready), off_(ready.demand.loads.size(), false) {}

    void add(std::size_t load) { off_[load] = true; }

    [[nodiscard]] bool any() const { return std::ranges::find(off_, true) != off_.end(); }
    // Something is off, there is an inverter, and nothing that is on hangs on it.
    [[nodiscard]] bool inverter() const {
        if (!any() || !unit(End::likely).inverter) return false;
        for (std::size_t i = 0; i < off_.size(); ++i)
            if (!off_[i] && ready_.demand.loads[i].from == scenario::Outlet::ac) return false;
        return true;
    }

    [[nodiscard]] outage::Course run(End end) const {
        return course(unit(end), steps(end), end);
    }

    [[nodiscard]] int fewest_packs(int most) const {
        const auto asked = steps(End::likely);
        const auto survives = [&](int packs) {
            return course(outage::with_packs(ready_, End::likely, packs), asked, End::likely)
                .survives;
        };
        if (!survives(most)) return 0;
        int too_few = 0;
        int enough = most;
        while (enough - too_few > 1) {
            const int middle = (too_few + enough) / 2;
            (survives(middle) ? enough : too_few) = middle;
        }
        return enough;
    }

  private:
    const outage::Ready& ready_;
    std::vector<bool> off_;

    [[nodiscard]] const outage::Unit& unit(End end) const {
        return ready_.units[static_cast<std::size_t>(end)];
    }
    // Its hours go, its place in the list stays.
    [[nodiscard]] std::vector<outage::DemandStep> steps(End end) const {
        auto demand = ready_.demand;
        for (std::size_t i = 0; i < off_.size(); ++i)
            if (off_[i]) demand.loads[i].strands.clear();
        if (inverter()) demand.inverter_on.clear();
        return outage::steps_of(ready_, demand, end);
    }
    [[nodiscard]] outage::Course course(const outage::Unit& unit,
                                        const std::vector<outage::DemandStep>& steps,
                                        End end) const {
        return outage::run(unit, steps, ready_.sun[static_cast<std::size_t>(end)],
                           ready_.outage.lasts, ready_.midnight, to_the_first_failure);
    }
};

RationStep step_of(const Shed& shed) {
    const auto likely = shed.run(End::likely);
    const auto hungry = shed.run(End::earliest);
    return {.lasts = likely.lasts,
            .lasts_low = std::min(hungry.lasts, likely.lasts),
            .survives = likely.survives,
            .survives_low = hungry.survives && likely.survives};
}

std::vector<ShedLoad> all_loads(const outage::Ready& ready) {
    std::vector<ShedLoad> loads;
    for (const auto& use : outage::load_uses(ready.demand))
        loads.push_back({.load = loads.size(), .name = use.name, .spared = use.per_day});
    return loads;
}

}  // namespace

Ration ration(const outage::Ready& ready) {
    const auto loads = all_loads(ready);
    const auto rank_of = [&](const ShedLoad& load) { return ready.demand.loads[load.load].rank; };
    std::set<int, std::greater<>> ranks;
    for (const auto& load : loads)
        ranks.insert(rank_of(load));
    Shed shed(ready);
    Ration ration{.all_on = step_of(shed)};
    const int last = ranks.empty() ? 0 : *ranks.rbegin();
    bool inverter_is_off = false;
    for (const int rank : ranks) {
        if (rank == last) break;
        std::vector<ShedLoad> off;
        std::ranges::copy_if(loads, std::back_inserter(off),
                             [&](const ShedLoad& load) { return rank_of(load) == rank; });
        for (const auto& load : off)
            shed.add(load.load);
        auto step = step_of(shed);
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

Ladder ration_ladder(const outage::Ready& ready, int most_packs) {
    Shed so_far(ready);
    Ladder ladder{.lasts = so_far.run(End::likely).lasts,
                  .packs = so_far.fewest_packs(most_packs)};
    for (auto& load : all_loads(ready)) {
        const int rank = ready.demand.loads[load.load].rank;
        if (rank > life_and_health)
            ladder.rungs.push_back({.off = std::move(load), .priority = rank});
    }
    std::ranges::stable_sort(ladder.rungs, [](const Rung& a, const Rung& b) {
        return a.priority != b.priority ? a.priority > b.priority : a.off.spared > b.off.spared;
    });
    for (auto& rung : ladder.rungs) {
        Shed alone(ready);
        alone.add(rung.off.load);
        rung.lasts_alone = alone.run(End::likely).lasts;
        rung.packs_alone = alone.fewest_packs(most_packs);
        so_far.add(rung.off.load);
        rung.lasts_so_far = so_far.run(End::likely).lasts;
        rung.packs_so_far = so_far.fewest_packs(most_packs);
    }
    return ladder;
}

}  // namespace sizing
