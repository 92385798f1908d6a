#include "outage/sky.hpp"

#include <cmath>

#include <boost/math/distributions/normal.hpp>

#include "solar/typical_sky.hpp"
#include "solar/weather.hpp"

namespace outage {

namespace {

using namespace units;

constexpr double one_in_ten = 0.10;
constexpr double storm_day = 0.05;   // the middle of the darkest tenth; method.md (7)
constexpr double day_to_day = 0.29;  // correlation of normal scores, [Graham 1988]

solar::Sky sky_at(SkyEnd end, double days) {
    const auto dull = dull_quantile(days);
    switch (end) {
        case SkyEnd::dull:
            return solar::QuantileSky{dull};
        case SkyEnd::bright:
            return solar::QuantileSky{dull.complement()};
        case SkyEnd::likely:
            break;
    }
    return solar::TypicalSky{};
}

void append(std::vector<SunChange>& changes, const solar::SunSeries& series, LocalTime starts) {
    for (const auto& step : series)
        changes.push_back(
            {.from = step.start - starts, .offered = step.offered, .clipped = step.clipped});
}

}  // namespace

Probability dull_quantile(double days) {
    const boost::math::normal standard;
    // Variance of the mean of n scores of a first-order autoregression, at most that of one.
    const double rho = day_to_day;
    const double n = std::max(1.0, days);
    const double sum = n * (1.0 + rho) / (1.0 - rho) -
                       2.0 * rho * (1.0 - std::pow(rho, n)) / ((1.0 - rho) * (1.0 - rho));
    const double deviation = std::sqrt(std::min(1.0, sum / (n * n)));
    return Probability(
        boost::math::cdf(standard, boost::math::quantile(standard, one_in_ten) * deviation));
}

std::vector<SunChange> sun_changes(const solar::Site& site,
                                   std::span<const solar::PanelGroup> groups,
                                   const solar::ControllerModel& controller,
                                   const scenario::Outage& outage, SkyEnd end) {
    std::vector<SunChange> changes;
    if (groups.empty()) return changes;
    const auto starts = outage.starts;
    const auto sky = sky_at(end, outage.lasts / day);
    Duration dark{};
    if (outage.cause == scenario::Cause::storm) {
        const double days = solar::first_days_of(starts);
        dark = std::min<Duration>(outage.lasts, midnight_before(starts) + days * day - starts);
        append(changes,
               solar::sun_offered(site, groups, controller, starts, dark,
                                  solar::QuantileSky{Probability(storm_day)}),
               starts);
    }
    if (dark < outage.lasts)
        append(
            changes,
            solar::sun_offered(site, groups, controller, starts + dark, outage.lasts - dark, sky),
            starts);
    return changes;
}

}  // namespace outage
