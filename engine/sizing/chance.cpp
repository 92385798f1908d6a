#include "sizing/chance.hpp"

#include <algorithm>
#include <cassert>
#include <cmath>

#include "chance/figures.hpp"

namespace sizing {

Chance counted(int lasted, int outages) {
    assert(outages >= 1 && lasted >= 0 && lasted <= outages);
    const auto interval = ::chance::wilson(lasted, outages);
    return {.of = units::Probability(lasted / double(outages)),
            .low = interval.low,
            .high = interval.high,
            .outages = outages};
}

Spread spread_of(std::span<units::Duration> lasts) {
    assert(!lasts.empty());
    std::sort(lasts.begin(), lasts.end());
    const auto rank = [&](double share) {
        const auto nearest = static_cast<std::size_t>(std::ceil(share * double(lasts.size())));
        return lasts[std::clamp<std::size_t>(nearest, 1, lasts.size()) - 1];
    };
    return {.p10 = rank(0.10), .p50 = rank(0.50), .p90 = rank(0.90)};
}

}  // namespace sizing
