// Up to 64 outages of units whose packs differ, side by side. method.md (4)
#pragma once

#include <span>
#include <vector>

#include "abreast/own.hpp"
#include "abreast/watch.hpp"

namespace abreast::lanes_detail {

// A stretch during which nothing switches, the same for all lanes of a block.
struct Stretch {
    double time = 0.0;    // s
    double begins = 0.0;  // s after the outage starts
    double ends = 0.0;
    std::size_t step = 0;   // of the demand
    std::size_t light = 0;  // of the sun
    std::size_t day = 0;    // of the unit
};

// Cut at every instant at which the clock begins a leg anew, and at moments that are watched.
[[nodiscard]] std::vector<Stretch> stretches(const Outage& outage, units::Duration lasts,
                                             std::span<const units::Duration> watched = {});

//   outages   at most `lanes`, with as many kinds of pack, 2 to most_kinds, that decay alike; with
//             needs; all switching at the same instants
//   decided   false for an outage that the clock must run
//   watched   of these outages; nullptr: nobody watches
void run_banks(std::span<const Outage> outages, std::span<const Stretch> over,
               units::Duration lasts, std::span<OwnEnding> endings, std::span<bool> decided,
               LaneCost& cost, Width width, Watched* watched = nullptr);

}  // namespace abreast::lanes_detail
