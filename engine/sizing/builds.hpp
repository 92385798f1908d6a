// Which builds meet the goal, and which of them a person might want. method.md (5)
#pragma once

#include <optional>
#include <vector>

#include "scenario/scenario.hpp"
#include "sizing/bill.hpp"
#include "sizing/sweep.hpp"

namespace sizing {

struct Build {
    int packs = 1;
    int panels = 0;
    Chance chance;
    std::optional<Spread> lasts;
    Bill bill;
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
[[nodiscard]] Builds builds_of(const scenario::Scenario& scenario, const Design& design,
                               const Sweep& sweep, int at_least = 1);

// The fewest packs from `from` on, up to the design's most, that last through as many weathers as
// the goal asks for; found by halving, since a pack more never makes it less sure.
struct PacksLasting {
    int packs = 1;
    Chance chance;
};
[[nodiscard]] std::optional<PacksLasting> fewest_packs(const Design& design, int from,
                                                       units::Probability goal, const Suns& suns);

// Counts on, a thousand weathers at a time from where the sweep ended, until the interval leaves
// the goal on one side or `most` are counted. The build's own chance when it is not near.
//   counted_so_far  the sweep's
[[nodiscard]] Chance counted_to_the_goal(const Design& design, const Build& build,
                                         units::Probability goal, std::uint64_t seed,
                                         int most = 8000, unsigned threads = 0);

}  // namespace sizing
