#include "scenario/file/open_end.hpp"

#include <algorithm>
#include <cmath>

#include "scenario/keys/most.hpp"

namespace scenario {

units::Duration longest_outage() {
    return double{most_days} * units::day;
}

units::Duration looked_at(units::Duration half_over_by) {
    constexpr double of_99_in_100 = 2.3263478740408408;  // standard deviations of a normal spread
    return std::min(longest_outage(), std::exp(of_99_in_100 * spread_of_length) * half_over_by);
}

units::Duration looked_at(const Outage& outage) {
    return outage.open_ended && outage.half_over_by ? looked_at(*outage.half_over_by)
                                                    : outage.lasts;
}

}  // namespace scenario
