// Lanes that must step alone.
#pragma once

#include <algorithm>
#include <bit>
#include <cstddef>
#include <cstdint>
#include <span>

namespace abreast {

// Visits the lanes whose mark is not zero, in order; eight are looked at together.
template <class Visit>
void each_alone(std::span<const double> alone, Visit visit) {
    for (std::size_t begins = 0; begins < alone.size(); begins += 8) {
        const std::size_t ends = std::min(begins + 8, alone.size());
        std::uint64_t any = 0;
        for (std::size_t lane = begins; lane < ends; ++lane)
            any |= std::bit_cast<std::uint64_t>(alone[lane]);
        if (any == 0) continue;
        for (std::size_t lane = begins; lane < ends; ++lane)
            if (alone[lane] != 0.0) visit(lane);
    }
}

}  // namespace abreast
