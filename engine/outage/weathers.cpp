#include "outage/weathers.hpp"

#include <thread>

#include "solar/weather.hpp"

namespace outage {

namespace {

using namespace units;

Ending ending_in(const Ready& ready, std::uint64_t seed, int number) {
    const auto& sky = *ready.sky;
    const auto days = static_cast<int>(sky.track.days().size());
    const solar::GivenSky given{
        solar::daily_clearness(*ready.site, ready.outage.starts, days, sky.weather,
                               {.seed = seed, .number = static_cast<std::uint32_t>(number)})};
    std::vector<SunChange> sun;
    for (const auto& step : sky.track.under(given, sky.controller))
        sun.push_back({.from = step.start - ready.outage.starts,
                       .offered = step.offered,
                       .clipped = step.clipped});
    const auto likely = static_cast<std::size_t>(End::likely);
    const auto course = run(ready.units[likely], ready.steps[likely], sun, ready.outage.lasts,
                            ready.midnight, {.trace = false, .after_failure = false});
    return {.lasts = course.lasts, .survives = course.survives};
}

}  // namespace

std::vector<Ending> endings_in_weathers(const Ready& ready, int weathers, std::uint64_t seed,
                                        unsigned threads) {
    if (weathers < 1) return {};
    if (!ready.sky) {
        const auto course = run(ready, End::likely, {.trace = false, .after_failure = false});
        return {{.lasts = course.lasts, .survives = course.survives}};
    }
    std::vector<Ending> endings(static_cast<std::size_t>(weathers));
    if (threads == 0) threads = std::max(1U, std::thread::hardware_concurrency());
    // Each thread writes its own entries; which thread runs a weather is of no account.
    const auto every = [&](unsigned first) {
        for (std::size_t i = first; i < endings.size(); i += threads)
            endings[i] = ending_in(ready, seed, static_cast<int>(i));
    };
    std::vector<std::jthread> others;
    for (unsigned thread = 1; thread < threads; ++thread)
        others.emplace_back(every, thread);
    every(0);
    others.clear();
    return endings;
}

}  // namespace outage
