#include "solar/weather/typical_sky.hpp"

#include <boost/math/quadrature/gauss.hpp>

#include "solar/sun_track.hpp"

namespace solar {

namespace {

using namespace units;

// A clearness and the share of days it stands for.
struct WeightedSky {
    Clearness clearness;
    double weight;
};

// Fifteen skies of a month by Gauss-Legendre over the share of darker days; method.md (45).
std::array<WeightedSky, 15> skies_of_month(const ClearnessDistribution& distribution) {
    using Rule = boost::math::quadrature::gauss<double, 15>;
    std::array<WeightedSky, 15> skies;
    std::size_t next = 0;
    for (std::size_t i = 0; i < Rule::abscissa().size(); ++i) {
        const double x = Rule::abscissa()[i];
        for (const double side : {-x, x}) {
            skies[next++] = {distribution.quantile(Probability(0.5 + 0.5 * side)),
                             0.5 * Rule::weights()[i]};
            if (x == 0.0) break;
        }
    }
    return skies;
}

void add(SunStep& to, const SunStep& step, double weight) {
    to.on_plane += weight * step.on_plane;
    to.offered += weight * step.offered;
    to.clipped += weight * step.clipped;
    to.current += weight * step.current;
}

}  // namespace

SunSeries SunTrack::under(const Sky& sky, const ControllerModel& controller) const {
    if (const auto* hourly = std::get_if<HourlySky>(&sky)) return under_hours(*hourly, controller);
    SunSeries series;
    series.reserve(steps_.size());
    const auto* given = std::get_if<GivenSky>(&sky);
    const auto covered =
        covered_days(given ? std::span<const SnowDraw>(given->snow) : std::span<const SnowDraw>());
    for (std::size_t number = 0; number < days_.size(); ++number) {
        std::vector<WeightedSky> skies;
        if (std::holds_alternative<TypicalSky>(sky)) {
            const auto all = skies_of_month(skies_[number]);
            skies.assign(all.begin(), all.end());
        } else if (const auto* quantile = std::get_if<QuantileSky>(&sky)) {
            skies = {{skies_[number].quantile(quantile->darker), 1.0}};
        } else {
            const auto& days = given->days;
            skies = {{days.empty() ? Clearness{} : days[std::min(number, days.size() - 1)], 1.0}};
        }
        std::vector<DayLight> lights;
        for (const auto& [clearness, weight] : skies)
            lights.push_back(day_light(number, clearness));
        for (std::size_t i = day_begins_[number]; i < day_begins_[number + 1]; ++i) {
            SunStep step{.start = steps_[i].start, .duration = steps_[i].duration};
            if (steps_[i].lit)
                for (std::size_t sky_number = 0; sky_number < skies.size(); ++sky_number)
                    add(step, lit(i, lights[sky_number], controller, covered[number]),
                        skies[sky_number].weight);
            series.push_back(step);
        }
    }
    return series;
}

SunSeries sun_offered(const Site& site, std::span<const PanelGroup> groups,
                      const ControllerModel& controller, LocalTime from, Duration lasts,
                      const Sky& sky) {
    return SunTrack(site, groups, from, lasts).under(sky, controller);
}

SunSum sum(std::span<const SunStep> series) {
    SunSum total;
    for (const SunStep& step : series) {
        total.offered += step.offered * step.duration;
        total.clipped += step.clipped * step.duration;
        total.on_plane += Irradiation(step.on_plane * step.duration);
    }
    return total;
}

DayRange day_range(const Site& site, std::span<const PanelGroup> groups,
                   const ControllerModel& controller, LocalTime day_held) {
    const SunTrack track(site, groups, midnight_before(day_held), day);
    const ClearnessDistribution skies(site.mean_clearness(day_held), site.elevation);
    // Ranked by what the days give, not by their clearness: a plane turned away from the sun, or
    // one in shade, gives most under thin cloud. method.md (45)
    constexpr int parts = 20;
    std::array<Energy, parts - 1> gives;
    for (int part = 1; part < parts; ++part)
        gives[std::size_t(part - 1)] =
            track.day_sum(0, skies.quantile(Probability(double(part) / parts)), controller).offered;
    std::sort(gives.begin(), gives.end());
    const auto at = [&](int part) { return gives[std::size_t(part - 1)]; };
    return {.low = at(2),
            .likely = at(10),
            .high = at(18),
            .mean = sum(track.under(TypicalSky{}, controller)).offered};
}

}  // namespace solar
