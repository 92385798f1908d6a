#include "sizing/builds/builds.hpp"

#include <algorithm>
#include <cmath>
#include <iterator>

#include "demand/power.hpp"

namespace sizing {

namespace {

using namespace units;

Build build_of(const scenario::Scenario& scenario, const Cell& cell) {
    return {.packs = cell.packs,
            .panels = cell.panels,
            .figures = cell.figures,
            .timed = cell.timed,
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
        if (*here < *there || (*here == *there && build.chance() > best->chance())) best = &build;
    }
    return best != nullptr ? std::optional(*best) : std::nullopt;
}

// Whether `a` is at least as good in all that is known of both, and better in something.
bool beats(const Build& a, const Build& b) {
    bool better = a.chance() > b.chance();
    if (a.chance() < b.chance()) return false;
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
        if (!(build.chance() > Probability(0.0))) continue;
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
    const bool medical = std::ranges::any_of(scenario.loads, demand::is_medical);
    return Probability(medical ? 0.99 : 0.90);
}

Builds builds_of(const scenario::Scenario& scenario, int panels, const Grid& grid, int at_least) {
    Builds builds;
    builds.goal = goal_of(scenario);
    std::vector<Build> all;
    for (const Cell& cell : grid.cells)
        all.push_back(build_of(scenario, cell));
    std::vector<Build> allowed;
    std::ranges::copy_if(all, std::back_inserter(allowed), [&](const Build& build) {
        return build.packs >= at_least && affordable(scenario, build);
    });
    std::vector<Build> meeting;
    std::ranges::copy_if(allowed, std::back_inserter(meeting),
                         [](const Build& build) { return build.figures.meets_the_goal(); });
    builds.feasible = !meeting.empty();
    builds.cheapest = least(meeting, [](const Build& build) { return build.bill.price; });
    builds.lightest = least(meeting, [](const Build& build) { return build.bill.weight; });
    builds.fewest_trips = least(meeting, [](const Build& build) { return build.bill.trips; });
    builds.frontier = frontier_of(all);
    panels = std::min(panels, grid.most_panels);
    for (int packs = std::max(1, at_least); packs <= grid.most_packs; ++packs) {
        const auto build = build_of(scenario, grid.at(packs, panels));
        if (!build.figures.meets_the_goal() || !affordable(scenario, build)) continue;
        builds.with_these_panels = build;
        if (packs > 1) builds.one_fewer = build_of(scenario, grid.at(packs - 1, panels));
        if (packs < grid.most_packs)
            builds.one_more = build_of(scenario, grid.at(packs + 1, panels));
        break;
    }
    if (!builds.feasible)
        builds.best_chance = *std::ranges::max_element(
            allowed.empty() ? all : allowed, {}, [](const Build& build) { return build.chance(); });
    return builds;
}

std::vector<Build> named_of(const Builds& builds) {
    std::vector<Build> named;
    for (const auto* build :
         {&builds.with_these_panels, &builds.one_fewer, &builds.one_more, &builds.best_chance})
        if (*build) named.push_back(**build);
    return named;
}

Build build_at(const scenario::Scenario& scenario, const Grid& grid, int packs, int panels) {
    return build_of(scenario, grid.at(packs, panels));
}

}  // namespace sizing
