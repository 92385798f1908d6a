// The bounded answer, without probabilities: what all readings allow together. method.md (9)
#pragma once

#include <cstddef>
#include <optional>
#include <span>
#include <vector>

namespace estimate {

// Both ends belong to it.
struct Bounds {
    double low = 0.0;
    double high = 0.0;
};

// What lies within all of them but `missed` at most; where that is several stretches, from the
// first to the last. Nothing where even so many do not meet. [Marzullo]
[[nodiscard]] std::optional<Bounds> within_all_but(std::span<const Bounds> bounds, int missed);

// Where all do not meet and all but one do: those that lie apart from what the others allow.
[[nodiscard]] std::vector<std::size_t> odd_ones(std::span<const Bounds> bounds);

}  // namespace estimate
