// The same outage under many weathers.
#pragma once

#include <cstdint>
#include <vector>

#include "outage/ready.hpp"
#include "units/quantities.hpp"

namespace outage {

// How one weather ends it.
struct Ending {
    units::Duration lasts{};
    bool survives = false;

    friend bool operator==(const Ending&, const Ending&) = default;
};

// The likely demand under `weathers` sequences of days; method.md (8).
//   gives      one entry a weather, in the order of their numbers: the same seed gives the same
//              entries, to the last bit, for any number of threads
//   threads    0 takes as many as the machine has
//   gives      one entry for all where there are no panels: weather does not matter then
[[nodiscard]] std::vector<Ending> endings_in_weathers(const Ready& ready, int weathers,
                                                      std::uint64_t seed, unsigned threads = 0);

}  // namespace outage
