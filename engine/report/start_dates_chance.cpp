#include "report/start_dates_chance.hpp"

#include <algorithm>
#include <cmath>

#include "solar/start_dates.hpp"

namespace report {

Chances of_start_dates(Chances counted, units::Duration lasts) {
    constexpr double z = 1.959964;  // 19 times in 20 of a normal distribution
    const double n = std::min<double>(counted.outages, solar::independent_start_dates(lasts));
    const double p = counted.of_lasting.value();
    const double middle = (p + z * z / (2.0 * n)) / (1.0 + z * z / n);  // [Wilson 1927]
    const double half =
        z * std::sqrt(p * (1.0 - p) / n + z * z / (4.0 * n * n)) / (1.0 + z * z / n);
    counted.low = units::Probability(std::max(0.0, middle - half));
    counted.high = units::Probability(std::min(1.0, middle + half));
    return counted;
}

}  // namespace report
