// Every number of packs with every number of panels, under the same many weathers. method.md
#pragma once

#include <cstdint>
#include <functional>
#include <optional>
#include <vector>

#include "sizing/builds/design.hpp"
#include "sizing/chance.hpp"

namespace sizing {

//   sequences  weathers that the chances are counted over
//   timed      of these, the first so many also say how long it lasts where it fails; may be 0
//   threads    0: as many as there are processors; the result is the same to the last bit
//   progress   called with the share done, from one thread at a time; false stops the sweep
struct SweepAsked {
    int sequences = 1000;
    int timed = 256;
    std::uint64_t seed = 1;
    unsigned threads = 0;
    std::function<bool(double)> progress = {};
};

//   lasts   where `timed` was asked for
struct SweptCell {
    int packs = 1;
    int panels = 0;
    Chance chance;
    std::optional<Spread> lasts;
};

struct Sweep {
    int most_packs = 0;
    int most_panels = 0;
    std::vector<SweptCell> cells;  // by packs from 1, within them by panels from 0
    abreast::LaneCost cost;
    std::size_t outages_run = 0;

    [[nodiscard]] const SweptCell& at(int packs, int panels) const {
        return cells[static_cast<std::size_t>((packs - 1) * (most_panels + 1) + panels)];
    }
};

//   gives  nothing when progress stopped it
[[nodiscard]] std::optional<Sweep> sweep(const Design& design, const SweepAsked& asked);

// What the sun offers a number of panels under each of the weathers `first` to `first + sequences`,
// W a step; empty entries without panels.
using Suns = std::vector<std::vector<double>>;
[[nodiscard]] Suns suns_in(const Design& design, int panels, int first, int sequences,
                           std::uint64_t seed, unsigned threads = 0);

// How they end with so many packs.
[[nodiscard]] std::vector<abreast::LaneEnding> endings_under(const Design& design, int packs,
                                                             const Suns& suns,
                                                             unsigned threads = 0);
[[nodiscard]] int lasted_under(const Design& design, int packs, const Suns& suns,
                               unsigned threads = 0);

// One cell over many weathers, the oracle of the sweep and what is asked when a chance must be
// known better: sequences `first` to `first + sequences`.
[[nodiscard]] int lasted_in(const Design& design, int packs, int panels, int first, int sequences,
                            std::uint64_t seed, unsigned threads = 0);

}  // namespace sizing
