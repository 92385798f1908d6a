#include "sizing/chance.hpp"

#include <algorithm>
#include <cassert>
#include <cmath>

namespace sizing {

Chance counted(int lasted, int outages) {
    assert(outages >= 1 && lasted >= 0 && lasted <= outages);
    constexpr double z = 1.959964;  // 19 times in 20 of a normal distribution
    const double n = outages;
    const double p = lasted / n;
    const double middle = (p + z * z / (2.0 * n)) / (1.0 + z * z / n);
    const double half =
        z * std::sqrt(p * (1.0 - p) / n + z * z / (4.0 * n * n)) / (1.0 + z * z / n);
    return {.of = units::Probability(p),
            .low = units::Probability(std::max(0.0, middle - half)),
            .high = units::Probability(std::min(1.0, middle + half)),
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
