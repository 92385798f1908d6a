#include "solar/sky_range.hpp"

#include <numeric>

#include "solar/sun_track.hpp"

namespace solar {

namespace {

using namespace units;

// What each day offers as a function of its clearness: straight lines between 65 skies. The error
// against the chain itself is below 0.1 % of a bright day's energy; tests/engine/solar/sky_range.
class DayYields {
  public:
    DayYields(const SunTrack& track, const ControllerModel& controller) {
        for (std::size_t number = 0; number < track.days().size(); ++number)
            for (int node = 0; node <= parts; ++node)
                yields_.push_back(
                    track.day_sum(number, Clearness(double(node) / parts), controller).offered /
                    joule);
    }

    [[nodiscard]] double joules(std::size_t number, Clearness clearness) const {
        const double at = std::clamp(clearness.value(), 0.0, 1.0) * parts;
        const int node = std::min(int(at), parts - 1);
        const double* of_day = &yields_[number * (parts + 1) + std::size_t(node)];
        return of_day[0] + (at - node) * (of_day[1] - of_day[0]);
    }

  private:
    static constexpr int parts = 64;
    std::vector<double> yields_;
};

}  // namespace

SkyRange sky_range(const Site& site, std::span<const PanelGroup> groups,
                   const ControllerModel& controller, LocalTime from, Duration lasts,
                   const WeatherModel& model, std::uint64_t seed, int sequences) {
    const SunTrack track(site, groups, from, lasts);
    const DayYields yields(track, controller);
    const int days = int(track.days().size());
    std::vector<std::pair<double, std::uint32_t>> ranked;
    ranked.reserve(std::size_t(sequences));
    SkyRange range{.dull = {}, .likely = {}, .bright = {}, .sequences = sequences};
    const auto of_number = [&](std::uint32_t number) {
        return daily_clearness(site, from, days, model, {.seed = seed, .number = number});
    };
    double all = 0.0;
    for (std::uint32_t number = 0; number < std::uint32_t(sequences); ++number) {
        double joules = 0.0;
        const auto clearness = of_number(number);
        for (std::size_t i = 0; i < clearness.size(); ++i)
            joules += yields.joules(i, clearness[i]);
        ranked.emplace_back(joules, number);
        all += joules;
    }
    std::sort(ranked.begin(), ranked.end());
    const auto at = [&](double below) {
        const auto index = std::size_t(below * (sequences - 1) + 0.5);
        const auto& [joules, number] = ranked[index];
        return RankedSky{{of_number(number)}, joules * joule};
    };
    if (sequences < 1) return range;
    range.dull = at(0.10);
    range.likely = at(0.50);
    range.bright = at(0.90);
    range.mean = all / sequences * joule;
    return range;
}

}  // namespace solar
