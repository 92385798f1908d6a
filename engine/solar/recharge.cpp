#include "solar/recharge.hpp"

#include <cassert>
#include <cmath>

namespace solar {

namespace {

using namespace units;

// What each day offers as a function of its clearness: straight lines between 33 skies.
class DayYields {
  public:
    DayYields(const SunTrack& track, const ControllerModel& controller) {
        for (std::size_t number = 0; number < track.days().size(); ++number)
            for (int node = 0; node <= parts; ++node)
                yields_.push_back(
                    track.day_sum(number, Clearness(double(node) / parts * clearest), controller)
                        .offered /
                    joule);
    }

    [[nodiscard]] double joules(std::size_t number, Clearness clearness) const {
        const double at = std::clamp(clearness.value() / clearest, 0.0, 1.0) * parts;
        const int node = std::min(int(at), parts - 1);
        const double* of_day = &yields_[number * (parts + 1) + std::size_t(node)];
        return of_day[0] + (at - node) * (of_day[1] - of_day[0]);
    }

  private:
    static constexpr int parts = 32;
    // No day is clearer: 0.75 + 2e-5 z at 9000 m. method.md (37)
    static constexpr double clearest = 0.95;
    std::vector<double> yields_;
};

// What snow leaves of a day: the rated power of the groups it does not cover, of all.
double left_by_snow(const SunTrack& track, const SunTrack::Covered& covered) {
    if (covered.empty()) return 1.0;
    double all = 0.0, left = 0.0;
    for (std::size_t i = 0; i < covered.size(); ++i) {
        const PanelGroup& group = track.groups()[i];
        const double rated = group.count * (group.model.rated_power / watt);
        all += rated;
        if (!covered[i]) left += rated;
    }
    return all > 0.0 ? left / all : 1.0;
}

// Joules day by day, one weather after another.
struct Yields {
    std::size_t days = 0;
    std::vector<double> joules;

    [[nodiscard]] int weathers() const { return days == 0 ? 0 : int(joules.size() / days); }
};

// The entry below which a share of all lies; nearest rank.
std::size_t rank(double share, std::size_t entries) {
    const auto nearest = std::size_t(std::ceil(share * double(entries)));
    return std::clamp<std::size_t>(nearest, 1, entries) - 1;
}

DayRange range_of(std::vector<double> joules) {
    double all = 0.0;
    for (const double each : joules)
        all += each;
    const auto at = [&](double share) {
        const auto nth = joules.begin() + std::ptrdiff_t(rank(share, joules.size()));
        std::nth_element(joules.begin(), nth, joules.end());
        return *nth * joule;
    };
    return {.low = at(0.10),
            .likely = at(0.50),
            .high = at(0.90),
            .mean = all / double(joules.size()) * joule};
}

Recharge ranked(const SunTrack& track, const Yields& yields) {
    const auto weathers = std::size_t(yields.weathers());
    Recharge found{.days = {}, .whole = {}, .ranked = {}, .weathers = int(weathers)};
    if (weathers == 0) return found;
    std::vector<double> whole(weathers, 0.0);
    std::vector<double> of_day(weathers);
    for (std::size_t number = 0; number < yields.days; ++number) {
        for (std::size_t i = 0; i < weathers; ++i) {
            of_day[i] = yields.joules[i * yields.days + number];
            whole[i] += of_day[i];
        }
        found.days.push_back(
            {.midnight = track.days()[number].midnight, .offered = range_of(of_day)});
    }
    std::vector<std::pair<double, int>> order;
    for (std::size_t i = 0; i < weathers; ++i)
        order.emplace_back(whole[i], int(i));
    std::sort(order.begin(), order.end());
    found.whole = range_of(std::move(whole));
    found.ranked = {.low = order[rank(0.10, weathers)].second,
                    .likely = order[rank(0.50, weathers)].second,
                    .high = order[rank(0.90, weathers)].second};
    return found;
}

}  // namespace

Recharge recharge(const SunTrack& track, const Site& site, const ControllerModel& controller,
                  const WeatherModel& model, std::uint64_t seed, int weathers) {
    assert(weathers > 0);
    const DayYields of_sky(track, controller);
    Yields yields{.days = track.days().size(), .joules = {}};
    yields.joules.reserve(yields.days * std::size_t(weathers));
    for (int number = 0; number < weathers && yields.days > 0; ++number) {
        const SequenceName named{.seed = seed, .number = std::uint32_t(number)};
        const auto clearness =
            daily_clearness(site, track.days().front().midnight, int(yields.days), model, named);
        const auto covered = track.covered_days(snow_draws(int(yields.days), named));
        for (std::size_t i = 0; i < yields.days; ++i)
            yields.joules.push_back(of_sky.joules(i, clearness[i]) *
                                    left_by_snow(track, covered[i]));
    }
    return ranked(track, yields);
}

HourlySky from_start_date(std::shared_ptr<const WeatherYear> year, int number,
                          std::vector<SnowDraw> snow) {
    return {
        .year = std::move(year), .days_later = number - season_reaches, .snow = std::move(snow)};
}

Recharge recharge_of_hours(const SunTrack& track, const ControllerModel& controller,
                           const std::shared_ptr<const WeatherYear>& year,
                           std::optional<std::uint64_t> snow_seed) {
    Yields yields{.days = track.days().size(), .joules = {}};
    for (int number = 0; number < start_dates; ++number) {
        std::vector<SnowDraw> snow;
        if (snow_seed)
            snow =
                snow_draws(int(yields.days), {.seed = *snow_seed, .number = std::uint32_t(number)});
        const SunSeries series =
            track.under(from_start_date(year, number, std::move(snow)), controller);
        const std::size_t begins = yields.joules.size();
        yields.joules.resize(begins + yields.days, 0.0);
        for (std::size_t i = 0; i < series.size(); ++i)
            yields.joules[begins + std::size_t(track.steps()[i].day)] +=
                series[i].offered * series[i].duration / joule;
    }
    return ranked(track, yields);
}

}  // namespace solar
