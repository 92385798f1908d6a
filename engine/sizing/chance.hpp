// A chance that was counted, and how well it is known.
#pragma once

#include <span>

#include "units/quantities.hpp"

namespace sizing {

//   low, high  19 times in 20 the true chance lies between them; method.md (4)
struct Chance {
    units::Probability of{};
    units::Probability low{};
    units::Probability high{1.0};
    int outages = 0;
};

//   outages  at least 1
[[nodiscard]] Chance counted(int lasted, int outages);

// Nearest rank: a tenth, half and nine tenths of the outages last no longer.
struct Spread {
    units::Duration p10{};
    units::Duration p50{};
    units::Duration p90{};
};

//   lasts  at least one; sorted by this function
[[nodiscard]] Spread spread_of(std::span<units::Duration> lasts);

}  // namespace sizing
