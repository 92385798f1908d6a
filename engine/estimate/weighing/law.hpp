// Where the readings most likely put what is not known: a normal law of a few scores, fitted to what
// members would have shown. Members drawn of it are weighed by how much rarer they are in the plan,
// so the law need not be right, only near. method.md (6) and (7)
#pragma once

#include <cstddef>
#include <optional>
#include <span>
#include <vector>

#include "estimate/weighing/matrix.hpp"

namespace estimate {

// What some members would have shown.
//   scores   by member, by unknown
//   off      by member, by reading: how far from what was read, over the error of that
struct Cloud {
    Matrix scores;
    Matrix off;
};

// `off` as a linear form of the scores of those unknowns that the readings see.
//   unknowns    their places, in rising order
//   at_nought   of each reading, with all of their scores 0
//   per_score   by reading, by unknown
//   rest        covariance of the readings' own errors and of what the form leaves
struct Linear {
    std::vector<std::size_t> unknowns;
    std::vector<double> at_nought;
    Matrix per_score;
    Matrix rest;
};

//   also   unknowns that count as seen in any case, by their places
[[nodiscard]] Linear linear_of(const Cloud& cloud, const std::vector<std::size_t>& also = {});

// A normal law of the scores of some unknowns; all others stay as the plan has them.
//   unknowns    their places
//   most_likely their scores, as the readings leave them
//   root        lower triangle of the root of the inverse of the covariance
struct Law {
    std::vector<std::size_t> unknowns;
    std::vector<double> most_likely;
    Matrix root;

    // A member of the plan becomes one of this law.
    //   scores   of all unknowns
    //   gives    logarithm of how much more frequent it is in the plan than in the law, but for a
    //            constant
    [[nodiscard]] double move(double* scores) const;
};

// Wider than the readings leave it, never wider than the plan.
//   without   a reading that does not count
[[nodiscard]] Law law_of(const Linear& linear, std::optional<std::size_t> without = {});

}  // namespace estimate
