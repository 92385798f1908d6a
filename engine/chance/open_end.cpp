#include "chance/open_end.hpp"

#include <algorithm>
#include <cassert>
#include <cmath>

#include <boost/math/distributions/normal.hpp>

#include "scenario/file/open_end.hpp"

namespace chance {

using namespace units;

Probability over_by(Duration after, Duration half_over_by) {
    assert(half_over_by > Duration{} && after >= Duration{});
    if (!(after > Duration{})) return Probability{};
    const double deviations = std::log(double(after / half_over_by)) / scenario::spread_of_length;
    return Probability(cdf(boost::math::normal(), deviations));
}

Probability still_out(const scenario::Outage& outage, Duration after) {
    assert(outage.half_over_by);
    const auto out_at = [&](Duration time) {
        return 1.0 - over_by(time, *outage.half_over_by).value();
    };
    return Probability(std::min(1.0, out_at(outage.out_for + after) / out_at(outage.out_for)));
}

Probability outlasts(const scenario::Outage& outage, const MemberEnd& end) {
    if (!outage.open_ended || !outage.half_over_by) return Probability(end.survives ? 1.0 : 0.0);
    const Duration half = *outage.half_over_by;
    // What has been seen to the end has been seen until 99 of 100 were over; where nobody looked
    // so far, no more is said than was seen.
    if (end.survives && scenario::looked_at(half) < scenario::longest_outage())
        return Probability(1.0);
    const double out_for = over_by(outage.out_for, half).value();
    const Duration lasts = end.survives ? outage.lasts : end.lasts;
    const double by_its_end = over_by(outage.out_for + lasts, half).value();
    return Probability((by_its_end - out_for) / (1.0 - out_for));
}

}  // namespace chance
