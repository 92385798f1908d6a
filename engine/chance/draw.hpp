// The numbers that members are made of: each unknown has a column of its own in each block, named
// by seed, block and the unknown's name, whatever else is drawn. method.md (1) and (2)
#pragma once

#include <array>
#include <cstdint>
#include <string_view>

namespace chance {

inline constexpr int lanes = 64;  // members of a block

struct Block {
    std::uint64_t seed = 1;
    std::uint32_t number = 0;
};

// One number a lane, in the open interval 0 to 1; each 64th of it holds exactly one.
using Column = std::array<double, lanes>;

//   name     of the unknown, as bytes; the same name is the same column
//   source   [Salmon 2011]; method.md (1) and (2)
[[nodiscard]] Column drawn(Block block, std::string_view name);

// FNV-1a, 64 bits. [FNV]
[[nodiscard]] std::uint64_t hash_of(std::string_view name);

}  // namespace chance
