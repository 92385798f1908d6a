#include "outage/sky.hpp"

#include <algorithm>
#include <cmath>

#include <boost/math/distributions/normal.hpp>

#include "solar/sun_track.hpp"
#include "solar/weather/typical_sky.hpp"
#include "solar/weather/weather.hpp"

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

    // A sky among the days of a band; its middle where more clearness is not more yield.
    [[nodiscard]] solar::Sky in(const solar::SkyBand& band, Probability share) const {
        const double from = band.from.value();
        const double at = in_order_ ? share.value() : 0.5;
        return solar::QuantileSky{Probability(from + (band.to.value() - from) * at)};
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

void append(std::vector<SunChange>& changes, const solar::SunSeries& series,
            const solar::ControllerModel& controller, LocalTime starts) {
    for (const auto& step : series)
        changes.push_back(sun_change(step, controller, starts));
}

}  // namespace

SunChange sun_change(const solar::SunStep& step, const solar::ControllerModel& controller,
                     LocalTime starts) {
    const bool passes_current = controller.kind == scenario::ControllerKind::pwm;
    return {.from = step.start - starts,
            .offered = step.offered,
            .clipped = step.clipped,
            .passes = passes_current ? step.offered / controller.battery_voltage : Current{}};
}

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

// The days of one sky.
struct SkySpan {
    Duration lasts;
    solar::Sky sky;
};

// What is known of the first days, as one band of the month's days for each local day.
std::vector<solar::SkyBand> first_bands(const scenario::Outage& outage) {
    scenario::Assumptions told_elsewhere;
    return solar::weather_model(outage, told_elsewhere).forecast;
}

std::vector<SkySpan> skies_of(SkyEnd end, const RankedSkies& ranked,
                              const scenario::Outage& outage) {
    const auto dull = dull_quantile(outage.lasts / day);
    const auto share = end == SkyEnd::likely ? Probability(0.5)
                       : end == SkyEnd::dull ? dull
                                             : dull.complement();
    const LocalTime starts = outage.starts;
    std::vector<SkySpan> spans;
    LocalTime from = starts;
    const auto until = [&](LocalTime to, const solar::Sky& sky) {
        const LocalTime ends = std::min(to, starts + outage.lasts);
        if (ends > from) spans.push_back({ends - from, sky});
        from = std::max(from, ends);
    };
    const LocalTime midnight = midnight_before(starts);
    const auto bands = first_bands(outage);
    for (std::size_t number = 0; number < bands.size(); ++number)
        until(midnight + double(number + 1) * day, ranked.in(bands[number], share));
    if (bands.empty() && outage.cause == scenario::Cause::storm)
        until(midnight + double(solar::first_days_of(starts)) * day,
              solar::QuantileSky{Probability(storm_day)});
    until(starts + outage.lasts,
          end == SkyEnd::likely ? solar::Sky(solar::TypicalSky{}) : ranked.at(share));
    return spans;
}

}  // namespace

std::vector<SunChange> sun_changes(const solar::Site& site,
                                   std::span<const solar::PanelGroup> groups,
                                   const solar::ControllerModel& controller,
                                   const scenario::Outage& outage, SkyEnd end) {
    std::vector<SunChange> changes;
    if (groups.empty()) return changes;
    const RankedSkies ranked(site, groups, controller, outage.starts);
    LocalTime from = outage.starts;
    for (const SkySpan& span : skies_of(end, ranked, outage)) {
        append(changes, solar::sun_offered(site, groups, controller, from, span.lasts, span.sky),
               controller, outage.starts);
        from = from + span.lasts;
    }
    return changes;
}

}  // namespace outage
