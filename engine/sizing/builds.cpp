#include "sizing/builds.hpp"

#include <algorithm>
#include <cmath>
#include <iterator>

#include "outage/demand_power.hpp"

namespace sizing {

namespace {

using namespace units;

Build build_of(const scenario::Scenario& scenario, const Cell& cell) {
    return {.packs = cell.packs,
            .panels = cell.panels,
            .chance = cell.chance,
            .lasts = cell.lasts,
            .bill = bill(scenario, cell.packs, cell.panels)};
}

// The best of those that meet the goal by some figure that must be known of each of them; ties go
// to the better chance.
template <class Figure>
std::optional<Build> least(const std::vector<Build>& meeting, Figure figure) {
    const Build* best = nullptr;
    for (const Build& build : meeting) {
        const auto here = figure(build);
        if (!here) return std::nullopt;
        if (best == nullptr) {
            best = &build;
            continue;
        }
        const auto there = figure(*best);
        if (*here < *there || (*here == *there && build.chance.of > best->chance.of)) best = &build;
    }
    return best != nullptr ? std::optional(*best) : std::nullopt;
}

// Whether `a` is at least as good in all that is known of both, and better in something.
bool beats(const Build& a, const Build& b) {
    bool better = a.chance.of > b.chance.of;
    if (a.chance.of < b.chance.of) return false;
    if (a.bill.price && b.bill.price) {
        if (*a.bill.price > *b.bill.price) return false;
        better = better || *a.bill.price < *b.bill.price;
    }
    if (a.bill.weight && b.bill.weight) {
        if (*a.bill.weight > *b.bill.weight) return false;
        better = better || *a.bill.weight < *b.bill.weight;
    }
    if (!a.bill.price && !a.bill.weight) {
        if (a.packs > b.packs || a.panels > b.panels) return false;
        better = better || a.packs < b.packs || a.panels < b.panels;
    }
    return better;
}

std::vector<Build> frontier_of(const std::vector<Build>& all) {
    std::vector<Build> frontier;
    for (const Build& build : all) {
        if (!(build.chance.of > Probability(0.0))) continue;
        const bool beaten =
            std::ranges::any_of(all, [&](const Build& other) { return beats(other, build); });
        if (!beaten) frontier.push_back(build);
    }
    std::ranges::stable_sort(frontier, [](const Build& a, const Build& b) {
        if (a.bill.price && b.bill.price) return *a.bill.price < *b.bill.price;
        if (a.bill.weight && b.bill.weight) return *a.bill.weight < *b.bill.weight;
        return a.packs + a.panels < b.packs + b.panels;
    });
    return frontier;
}

// What is not known to cost too much.
bool affordable(const scenario::Scenario& scenario, const Build& build) {
    if (!scenario.goal || !scenario.goal->spend_at_most) return true;
    return !build.bill.price || *build.bill.price <= *scenario.goal->spend_at_most;
}

}  // namespace

Probability goal_of(const scenario::Scenario& scenario) {
    if (scenario.goal && scenario.goal->chance) return *scenario.goal->chance;
    const bool medical = std::ranges::any_of(scenario.loads, outage::is_medical);
    return Probability(medical ? 0.99 : 0.90);
}

Builds builds_of(const scenario::Scenario& scenario, const Design& design, const Sweep& sweep,
                 int at_least) {
    Builds builds;
    builds.goal = goal_of(scenario);
    std::vector<Build> all;
    for (const Cell& cell : sweep.cells)
        all.push_back(build_of(scenario, cell));
    std::vector<Build> allowed;
    std::ranges::copy_if(all, std::back_inserter(allowed), [&](const Build& build) {
        return build.packs >= at_least && affordable(scenario, build);
    });
    std::vector<Build> meeting;
    std::ranges::copy_if(allowed, std::back_inserter(meeting),
                         [&](const Build& build) { return build.chance.of >= builds.goal; });
    builds.feasible = !meeting.empty();
    builds.cheapest = least(meeting, [](const Build& build) { return build.bill.price; });
    builds.lightest = least(meeting, [](const Build& build) { return build.bill.weight; });
    builds.fewest_trips = least(meeting, [](const Build& build) { return build.bill.trips; });
    builds.frontier = frontier_of(all);
    const int panels = std::min(design.panels, sweep.most_panels);
    for (int packs = std::max(1, at_least); packs <= sweep.most_packs; ++packs) {
        const auto build = build_of(scenario, sweep.at(packs, panels));
        if (build.chance.of < builds.goal || !affordable(scenario, build)) continue;
        builds.with_these_panels = build;
        if (packs > 1) builds.one_fewer = build_of(scenario, sweep.at(packs - 1, panels));
        if (packs < sweep.most_packs)
            builds.one_more = build_of(scenario, sweep.at(packs + 1, panels));
        break;
    }
    if (!builds.feasible)
        builds.best_chance =
            *std::ranges::max_element(allowed.empty() ? all : allowed, {},
                                      [](const Build& build) { return build.chance.of; });
    return builds;
}

std::optional<PacksLasting> fewest_packs(const Design& design, int from, Probability goal,
                                         const Suns& suns) {
    const auto chance_with = [&](int packs) {
        return counted(lasted_under(design, packs, suns), static_cast<int>(suns.size()));
    };
    int too_few = from - 1;
    int enough = design.most_packs;
    Chance chance = chance_with(enough);
    if (chance.of < goal) return std::nullopt;
    while (enough - too_few > 1) {
        const int middle = (too_few + enough) / 2;
        const auto there = chance_with(middle);
        if (there.of >= goal) {
            enough = middle;
            chance = there;
        } else {
            too_few = middle;
        }
    }
    return PacksLasting{.packs = enough, .chance = chance};
}

Chance counted_to_the_goal(const Design& design, const Build& build, Probability goal,
                           std::uint64_t seed, int most, unsigned threads) {
    Chance chance = build.chance;
    if (build.panels == 0) return chance;  // without sun every weather is the same
    int lasted = static_cast<int>(std::lround(chance.of.value() * chance.outages));
    most = std::min(most, design.most_weathers);
    while (chance.low <= goal && goal <= chance.high && chance.outages < most) {
        const int further = std::min(1000, most - chance.outages);
        lasted +=
            lasted_in(design, build.packs, build.panels, chance.outages, further, seed, threads);
        chance = counted(lasted, chance.outages + further);
    }
    return chance;
}

}  // namespace sizing
