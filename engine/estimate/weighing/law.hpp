// Where the readings most likely put what is not known: a normal law of a few scores, made of a
// linear form of what members show. Members drawn of it are weighed by how much rarer they are in
// the plan, so the law need not be right, only near. method.md (6) and (7)
#pragma once

#include <cstddef>
#include <optional>
#include <vector>

#include "estimate/weighing/linear.hpp"
#include "estimate/weighing/matrix.hpp"

namespace estimate {

// A normal law of the scores of some unknowns; all others stay as the plan has them.
//   unknowns    their places
//   most_likely their scores, as the readings leave them
//   root        lower triangle of the root of the inverse of the covariance
struct Law {
    std::vector<std::size_t> unknowns;
    std::vector<double> most_likely;
    Matrix root;

    [[nodiscard]] bool operator==(const Law&) const = default;

    // A member of the plan becomes one of this law.
    //   scores   of all unknowns
    void move(double* scores) const;

    // A member of the plan becomes one near to another. Who goes on so, from anywhere, is in the end
    // as if drawn of this law. [Cotter 2013]
    //   from     scores of the other, of all unknowns
    //   kept     correlation with the other, 0 to 1
    void move_from(const std::vector<double>& from, double kept, double* scores) const;

    // Logarithm of how much more frequent a member is in this law than in the plan.
    //   scores   of all unknowns
    [[nodiscard]] double against_plan(const double* scores) const;

  private:
    // As it was drawn before it was moved.
    [[nodiscard]] double own_score(const double* scores, std::size_t i) const;
};

// Wider than the readings leave it, never wider than the plan.
//   without   a reading that does not count
[[nodiscard]] Law law_of(const Linear& linear, std::optional<std::size_t> without = {});

}  // namespace estimate
