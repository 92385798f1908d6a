// How the store of the packs spreads over the members as the outage goes on.
#pragma once

#include <array>
#include <cstddef>
#include <vector>

#include "chance/members.hpp"

namespace sizing {

// Shares of the members that have at least so much stored.
inline constexpr std::array<double, 5> fan_shares{0.9, 0.75, 0.5, 0.25, 0.1};

//   at       after the outage starts, from 0 to its end
//   stored   one value a moment for each of fan_shares, never less for a smaller share
struct Fan {
    std::vector<units::Duration> at;
    std::array<std::vector<units::Energy>, fan_shares.size()> stored;
};

// Of the first 128 members, each to the end of the outage, with packs and panels as they are.
//   every   between two moments, above 0; the last may be shorter
[[nodiscard]] Fan fan_of(const chance::Members& members, units::Duration every,
                         unsigned threads = 0);

}  // namespace sizing
