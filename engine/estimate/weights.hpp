// Weights of members by what was read, and members drawn by their weight. method.md (5) and (6)
#pragma once

#include <cstddef>
#include <span>
#include <vector>

namespace estimate {

// Sum to 1; alike, to the last bit, where all likelihoods are.
//   log_likelihood   one a member; minus infinity for what cannot be
//   exponent         0 to 1: how much of it is taken
[[nodiscard]] std::vector<double> weights_of(std::span<const double> log_likelihood,
                                             double exponent = 1.0);

// So many members of equal weight would say as much.
[[nodiscard]] double effective(std::span<const double> weights);

// Places of members, as many as there are, each as often as its weight is of all: at even steps
// from half a step on, so that it is the same each time.
[[nodiscard]] std::vector<std::size_t> drawn_again(std::span<const double> weights,
                                                   std::size_t count);

}  // namespace estimate
