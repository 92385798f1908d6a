#include "estimate/relaxed.hpp"

#include <algorithm>
#include <utility>

namespace estimate {

std::optional<Bounds> within_all_but(std::span<const Bounds> bounds, int missed) {
    // Ends in order; at one place what begins comes before what ends.
    std::vector<std::pair<double, int>> ends;
    for (const Bounds& one : bounds) {
        ends.emplace_back(one.low, 0);
        ends.emplace_back(one.high, 1);
    }
    std::ranges::sort(ends);
    const int needed = std::max(1, static_cast<int>(bounds.size()) - missed);
    std::optional<Bounds> found;
    int inside = 0;
    for (const auto& [at, ends_here] : ends) {
        if (ends_here == 0) {
            if (++inside >= needed && !found) found = Bounds{at, at};
        } else {
            if (inside >= needed && found) found->high = at;
            --inside;
        }
    }
    return found;
}

std::vector<std::size_t> odd_ones(std::span<const Bounds> bounds) {
    std::vector<std::size_t> odd;
    if (bounds.size() < 3 || within_all_but(bounds, 0)) return odd;
    const auto most = within_all_but(bounds, 1);
    if (!most) return odd;
    for (std::size_t i = 0; i < bounds.size(); ++i)
        if (bounds[i].high < most->low || bounds[i].low > most->high) odd.push_back(i);
    return odd;
}

}  // namespace estimate
