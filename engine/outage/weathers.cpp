#include "outage/weathers.hpp"

#include "outage/in_threads.hpp"
#include "outage/ready_sun.hpp"
#include "outage/sky.hpp"
#include "solar/weather/weather.hpp"

namespace outage {

namespace {

using namespace units;

Ending ending_in(const Ready& ready, std::uint64_t seed, int number) {
    const auto sun = sun_in_weather(ready, seed, number);
    const auto likely = static_cast<std::size_t>(End::likely);
    const auto course = run(ready.units[likely], ready.steps[likely], sun, ready.outage.lasts,
                            ready.midnight, {.trace = false, .after_failure = false});
    return {.lasts = course.lasts, .survives = course.survives};
}

}  // namespace

solar::Sky sky_of(const Ready& ready, std::uint64_t seed, int number) {
    const auto& sky = *ready.sky;
    const auto days = static_cast<int>(sky.track.days().size());
    const solar::SequenceName named{.seed = seed, .number = static_cast<std::uint32_t>(number)};
    if (sky.hours) return solar::from_start_date(sky.hours, number, solar::snow_draws(days, named));
    return solar::GivenSky{
        .days = solar::daily_clearness(*ready.site, ready.outage.starts, days, sky.weather, named),
        .snow = solar::snow_draws(days, named)};
}

std::vector<SunChange> sun_under(const Ready& ready, const solar::Sky& sky) {
    std::vector<SunChange> sun;
    for (const auto& step : ready.sky->track.under(sky, ready.sky->controller))
        sun.push_back(sun_change(step, ready.sky->controller, ready.outage.starts));
    return sun;
}

std::vector<SunChange> sun_in_weather(const Ready& ready, std::uint64_t seed, int number) {
    if (!ready.sky) return {};
    return sun_under(ready, sky_of(ready, seed, number));
}

std::vector<Ending> endings_in_weathers(const Ready& ready, int weathers, std::uint64_t seed,
                                        unsigned threads) {
    if (weathers < 1) return {};
    if (!ready.sky) {
        const auto course = run(ready, End::likely, {.trace = false, .after_failure = false});
        return {{.lasts = course.lasts, .survives = course.survives}};
    }
    if (ready.sky->hours) weathers = std::min(weathers, solar::start_dates);
    std::vector<Ending> endings(static_cast<std::size_t>(weathers));
    for_each_number(weathers, threads, [&](int number) {
        endings[static_cast<std::size_t>(number)] = ending_in(ready, seed, number);
    });
    return endings;
}

}  // namespace outage
