// Members drawn by their weight, and moved on from there. method.md (7a)
#pragma once

#include <cstdint>

#include "estimate/weighing/batch.hpp"

namespace estimate {

// As the readings leave them, of equal weight but for those that could not be moved.
//   all     that were run, of which those that count most are taken
//   law     near to what the readings leave
//   first   block of the plan's numbers that nothing was drawn of yet
[[nodiscard]] Batch moved_on(const Batch& all, const Law& law, const Unknowns& unknowns,
                             const Runner& runner, std::uint64_t seed, int first);

}  // namespace estimate
