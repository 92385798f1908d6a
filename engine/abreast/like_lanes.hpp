// Up to 64 outages of units whose packs are alike, each with packs, loads and a sun of its own,
// side by side. method.md (5)
#pragma once

#include <span>

#include "abreast/bank_lanes.hpp"
#include "abreast/own.hpp"

namespace abreast::lanes_detail {

// Whether both are stepped by the same rules.
[[nodiscard]] bool built_alike(const outage::Unit& one, const outage::Unit& other);

//   outages   at most `lanes`, each with one kind of pack, all built alike; with
//             needs; all switching at the same instants
//   decided   false for an outage that the clock must run
//   watched   of these outages; nullptr: nobody watches
void run_likes(std::span<const Outage> outages, std::span<const Stretch> over,
               units::Duration lasts, std::span<OwnEnding> endings, std::span<bool> decided,
               LaneCost& cost, Width width, Watched* watched = nullptr);

}  // namespace abreast::lanes_detail
