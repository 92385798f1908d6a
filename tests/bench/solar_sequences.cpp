// Two thousand sequences of fourteen days through the whole sun chain, against the random numbers
// and the geometry alone.
#include <chrono>
#include <cstdio>

#include "solar/recharge.hpp"
#include "solar/sun_track.hpp"

namespace {

using namespace units;
using namespace solar;

template <class Work>
double milliseconds(const Work& work) {
    double best = 1e9;
    for (int turn = 0; turn < 3; ++turn) {
        const auto begins = std::chrono::steady_clock::now();
        work();
        const std::chrono::duration<double, std::milli> took =
            std::chrono::steady_clock::now() - begins;
        best = std::min(best, took.count());
    }
    return best;
}

}  // namespace

int main() {
    Site site;
    site.at = {.latitude = 42.0 * degree, .longitude = -88.0 * degree};
    site.utc_offset = -6.0 * hour;
    site.clearness.fill(Clearness(0.45));
    const std::array groups{PanelGroup{.model = {},
                                       .count = 3,
                                       .aims = {{{}, 60.0 * degree, 180.0 * degree}},
                                       .out = {},
                                       .shade = {},
                                       .covered_days = {}}};
    const LocalTime from = local_time(std::chrono::year(2026) / 1 / 14, 18.0 * hour);
    constexpr int days = 14;
    constexpr std::uint32_t sequences = 2000;
    const ControllerModel controller;
    double kept = 0.0;  // so that nothing is left out

    const double geometry = milliseconds(
        [&] { kept += double(SunTrack(site, groups, from, double(days) * day).steps().size()); });
    const double draws = milliseconds([&] {
        for (std::uint32_t i = 0; i < sequences; ++i)
            kept += daily_clearness(site, from, days, {}, {.seed = 1, .number = i})[3].value();
    });
    const SunTrack track(site, groups, from, double(days) * day);
    const double steps = milliseconds([&] {
        for (std::uint32_t i = 0; i < sequences; ++i) {
            const auto clearness = daily_clearness(site, from, days, {}, {.seed = 1, .number = i});
            for (std::size_t number = 0; number < track.days().size(); ++number)
                kept += track
                            .day_sum(number, clearness[std::min(number, clearness.size() - 1)],
                                     controller)
                            .offered.value();
        }
    });
    const double ranked = milliseconds([&] {
        const SunTrack fresh(site, groups, from, double(days) * day);
        kept += recharge(fresh, site, controller, {}, 1, sequences).whole.mean.value();
    });
    std::printf(
        "geometry of %d days %.3f ms; drawing %u sequences %.1f ms; every step of all %.1f ms "
        "(%.1f times the drawing); ranked by day yields %.1f ms; check %.6g\n",
        days, geometry, sequences, draws, steps, steps / draws, ranked, kept);
}
