#include "solar/weather/start_dates.hpp"

#include <cmath>

#include "solar/recharge.hpp"

namespace solar {

double independent_start_dates(units::Duration lasts) {
    constexpr double day_to_day = 0.29;  // of normal scores, [Graham 1988]
    const int days = std::max(1, int(std::ceil(lasts / units::day)));
    // What two runs of days, so many days apart, have in common: the sum over all pairs of days.
    const auto common = [&](int apart) {
        double sum = 0.0;
        for (int between = 1 - days; between < days; ++between)
            sum += (days - std::abs(between)) * std::pow(day_to_day, std::abs(between + apart));
        return sum;
    };
    const double alone = common(0);
    double together = 1.0;
    for (int apart = 1; apart < start_dates; ++apart)
        together += 2.0 * (1.0 - double(apart) / start_dates) * common(apart) / alone;
    return std::max(1.0, start_dates / together);
}

}  // namespace solar
