// From members to what is told: a chance with its interval, and the times that go with it.
// method.md (10) to (13)
#pragma once

#include <optional>
#include <span>
#include <vector>

#include "units/quantities.hpp"

namespace chance {

// How the outage ends for one member.
//   lasts     until the supply first fails; the whole outage where it never does
//   survives  it never does
//   outlasts  chance that it lasts to the outage's end: open_end.hpp
//   weight    share of all members; all of them sum to 1
struct Outcome {
    units::Duration lasts{};
    bool survives = false;
    units::Probability outlasts{};
    double weight = 0.0;
};

// 19 times in 20 the true chance lies between them.
struct Interval {
    units::Probability low{};
    units::Probability high{1.0};
};

//   lasted   of `tried`, at least one; [Wilson 1927]
[[nodiscard]] Interval wilson(double lasted, double tried);

// Of members without weights, from how many lasted in each block of 64, or the sum of their
// chances: by the spread of the blocks, or by Wilson's where there is one block, or fewer than 10
// members on a side.
[[nodiscard]] Interval interval_of_blocks(std::span<const double> lasted);

// Smallest time by which more than this share of the outcomes has ended.
//   takes    at least one, shortest first
[[nodiscard]] units::Duration time_of(std::span<const Outcome> sorted, double share);

// 1/sum of squares: as many members of equal weight say as much.
[[nodiscard]] double effective(std::span<const Outcome> outcomes);

// Share that lasts to the end; a whole number of members where their weights are equal and the
// outage's length is known.
[[nodiscard]] double share_that_outlasts(std::span<const Outcome> outcomes);

//   of, low, high       chance to the end and its interval
//   members, effective  that it rests on
//   nine_in_ten         nine in ten members last longer, likewise the others
//   count_on            longer than this with the chance of the goal
//   at_once             share in which it fails within a minute
struct Figures {
    units::Probability of{};
    units::Probability low{};
    units::Probability high{1.0};
    int members = 0;
    double effective = 0.0;
    units::Duration nine_in_ten{};
    units::Duration half{};
    units::Duration one_in_ten{};
    units::Probability goal{};
    units::Duration count_on{};
    units::Probability at_once{};

    [[nodiscard]] bool meets_the_goal() const;
};

// Of the members' skies, where they are those of a weather file.
//   of            each member's start date, from 0; empty without a file
//   independent   as many dates that share nothing say as much: at least 1
struct StartDates {
    std::span<const int> of = {};
    double independent = 1.0;
};

//   outcomes   whole blocks of 64 of equal weight, in the order of their numbers
//   dates      where there are any the interval holds for all years, one_year.hpp
[[nodiscard]] Figures figures_of(std::span<const Outcome> outcomes, units::Probability goal,
                                 const StartDates& dates = {});

}  // namespace chance
