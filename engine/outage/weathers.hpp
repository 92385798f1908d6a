// The same outage under many weathers.
#pragma once

#include <cstdint>
#include <optional>
#include <vector>

#include "outage/ready.hpp"
#include "solar/recharge.hpp"
#include "units/quantities.hpp"

namespace outage {

// How one weather ends it.
struct Ending {
    units::Duration lasts{};
    bool survives = false;

    friend bool operator==(const Ending&, const Ending&) = default;
};

// The sky of weather `number`: a sequence drawn from `seed`, or a weather file's hours from one of
// its start dates. With panels only.
[[nodiscard]] solar::Sky sky_of(const Ready& ready, std::uint64_t seed, int number);

// What the sun offers under a sky. With panels only.
[[nodiscard]] std::vector<SunChange> sun_under(const Ready& ready, const solar::Sky& sky);

// What the sun offers in weather `number`: a sequence drawn from `seed`, or, with a weather file,
// its hours from one of solar::start_dates. Empty without panels.
[[nodiscard]] std::vector<SunChange> sun_in_weather(const Ready& ready, std::uint64_t seed,
                                                    int number);

// The likely demand under `weathers` sequences of days; method.md (8). A weather file has only its
// start dates: never more of them than solar::start_dates.
//   gives      one entry a weather, in the order of their numbers: the same seed gives the same
//              entries, to the last bit, for any number of threads
//   threads    0 takes as many as the machine has
//   gives      one entry for all where there are no panels: weather does not matter then
[[nodiscard]] std::vector<Ending> endings_in_weathers(const Ready& ready, int weathers,
                                                      std::uint64_t seed, unsigned threads = 0);

}  // namespace outage
