#include "outage/sky.hpp"

#include <algorithm>
#include <cmath>

#include <boost/math/distributions/normal.hpp>

#include "solar/sun_track.hpp"
#include "solar/typical_sky.hpp"
#include "solar/weather.hpp"

namespace outage {

namespace {

using namespace units;

constexpr double one_in_ten = 0.10;
constexpr double storm_day = 0.05;   // the middle of the darkest tenth; method.md (7)
constexpr double day_to_day = 0.29;  // correlation of normal scores, [Graham 1988]

// The skies of a day in the order of what the panels make of them. Light on most planes grows with
// clearness; on one turned away from the sun, or in shade, it does not.
class RankedSkies {
  public:
    RankedSkies(const solar::Site& site, std::span<const solar::PanelGroup> groups,
                const solar::ControllerModel& controller, LocalTime starts) {
        const auto midnight = midnight_before(starts + 12.0 * hour);  // a whole day of the outage
        const solar::SunTrack track(site, groups, midnight, day);
        const solar::ClearnessDistribution skies(site.mean_clearness(midnight), site.elevation);
        for (int part = 1; part < parts; ++part) {
            const Probability darker(static_cast<double>(part) / parts);
            ranked_.emplace_back(track.day_sum(0, skies.quantile(darker), controller).offered,
                                 darker);
        }
        // A thousandth less is no other order.
        const auto well_below = [](const auto& a, const auto& b) {
            return a.first < 0.999 * b.first;
        };
        in_order_ = std::is_sorted(ranked_.begin(), ranked_.end(), well_below);
        if (in_order_) return;
        std::stable_sort(ranked_.begin(), ranked_.end(),
                         [](const auto& a, const auto& b) { return a.first < b.first; });
        typical_ = solar::sum(track.under(solar::TypicalSky{}, controller)).offered;
    }

    // The sky that gives more than such a share of them; the typical one where that would pass it.
    [[nodiscard]] solar::Sky at(Probability share) const {
        if (in_order_) return solar::QuantileSky{share};
        const auto rank = std::clamp(std::lround(share.value() * parts), 1L, parts - 1L) - 1;
        const auto& [gives, darker] = ranked_[static_cast<std::size_t>(rank)];
        const bool is_low = share.value() < 0.5;
        if (is_low ? gives > typical_ : gives < typical_) return solar::TypicalSky{};
        return solar::QuantileSky{darker};
    }

  private:
    static constexpr int parts = 40;
    std::vector<std::pair<Energy, Probability>> ranked_;
    bool in_order_ = false;
    Energy typical_{};
};

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

namespace {

solar::Sky sky_at(SkyEnd end, const solar::Site& site, std::span<const solar::PanelGroup> groups,
                  const solar::ControllerModel& controller, const scenario::Outage& outage) {
    if (end == SkyEnd::likely) return solar::TypicalSky{};
    const auto dull = dull_quantile(outage.lasts / day);
    const RankedSkies skies(site, groups, controller, outage.starts);
    return skies.at(end == SkyEnd::dull ? dull : dull.complement());
}

}  // namespace

std::vector<SunChange> sun_changes(const solar::Site& site,
                                   std::span<const solar::PanelGroup> groups,
                                   const solar::ControllerModel& controller,
                                   const scenario::Outage& outage, SkyEnd end) {
    std::vector<SunChange> changes;
    if (groups.empty()) return changes;
    const auto starts = outage.starts;
    const auto sky = sky_at(end, site, groups, controller, outage);
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
