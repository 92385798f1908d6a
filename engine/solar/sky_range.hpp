// The dull, the likely and the bright course of an outage's weather.
#pragma once

#include <span>

#include "solar/typical_sky.hpp"
#include "solar/weather.hpp"

namespace solar {

// One sequence of days and what it offers over the outage.
struct RankedSky {
    GivenSky sky;
    units::Energy offered{};
};

struct SkyRange {
    RankedSky dull;    // a tenth of the sequences offer less
    RankedSky likely;  // half
    RankedSky bright;  // nine tenths
    units::Energy mean{};
    int sequences = 0;
};

// Sequences drawn from `seed`, ranked by what they offer. Each is a whole course of days, so dull
// days come in runs as they do outside, instead of every day being a dull one.
[[nodiscard]] SkyRange sky_range(const Site& site, std::span<const PanelGroup> groups,
                                 const ControllerModel& controller, units::LocalTime from,
                                 units::Duration lasts, const WeatherModel& model,
                                 std::uint64_t seed = 1, int sequences = 2000);

}  // namespace solar
