// Which builds meet the goal, and which of them a person might want. method.md (5)
#pragma once

#include <optional>
#include <vector>

#include "scenario/scenario.hpp"
#include "sizing/builds/bill.hpp"
#include "sizing/builds/grid.hpp"

namespace sizing {

//   figures, timed   as Cell has them
struct Build {
    int packs = 1;
    int panels = 0;
    chance::Figures figures;
    bool timed = false;
    Bill bill;

    [[nodiscard]] units::Probability chance() const { return figures.of; }
};

// goal.chance; where the scenario sets none 0.90, and 0.99 with a medical load: ours.
[[nodiscard]] units::Probability goal_of(const scenario::Scenario& scenario);

// Every build named meets the goal by its counted chance; absent where none does, or where what it
// is chosen by is not known for every build that meets it.
//   with_these_panels  fewest packs with as many panels as the scenario has
//   one_fewer, one_more  beside it, whether or not they meet the goal
//   frontier           no other build is as good in price, weight and chance and better in one;
//                      by weight where prices are unknown; cheapest first
struct Builds {
    units::Probability goal{};
    std::optional<Build> with_these_panels;
    std::optional<Build> one_fewer;
    std::optional<Build> one_more;
    std::optional<Build> cheapest;
    std::optional<Build> lightest;
    std::optional<Build> fewest_trips;
    std::optional<Build>
        best_chance;  // of those that may be spent on, where nothing meets the goal
    std::vector<Build> frontier;
    bool feasible = false;  // some build of the grid meets the goal
};

//   at_least   packs, by some other need, such as the start of a motor; no build with fewer meets
//              the goal
//   panels     as the scenario has them
[[nodiscard]] Builds builds_of(const scenario::Scenario& scenario, int panels, const Grid& grid,
                               int at_least = 1);

// Those of which people are told how long they last: the first named, its neighbours, and the best
// where nothing meets the goal.
[[nodiscard]] std::vector<Build> named_of(const Builds& builds);

// One build of the grid.
[[nodiscard]] Build build_at(const scenario::Scenario& scenario, const Grid& grid, int packs,
                             int panels);

}  // namespace sizing
