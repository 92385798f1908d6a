// The chance when not the weather alone but also what is not well known of the loads is varied.
#pragma once

#include <cstdint>
#include <optional>
#include <vector>

#include "scenario/scenario.hpp"
#include "sizing/chance.hpp"
#include "sizing/design.hpp"

namespace sizing {

// The inputs that have a range, each a coordinate of its own but for those with a common cause:
// compressors work harder in a warm room, so they share one. method.md (8)
struct Inputs {
    std::vector<int> of_load;  // the load's coordinate, from 0; -1 where nothing is moved
    int of_idle = -1;          // of the inverter's own draw
    int coordinates = 0;
};

[[nodiscard]] Inputs inputs_of(const scenario::Scenario& scenario, const outage::Ready& ready);

// The same outage with every input at its place in the range: 0 the least it may draw, 0.5 what is
// likely, 1 the most.
//   at   one entry a coordinate
[[nodiscard]] outage::Ready with_inputs(const outage::Ready& ready, const Inputs& inputs,
                                        const std::vector<double>& at);

// Over weathers and inputs together, for some builds; each build meets the same.
//   builds   packs and panels
//   gives    one chance a build; nothing where no input has a range
struct BuildSize {
    int packs = 1;
    int panels = 0;
};
[[nodiscard]] std::optional<std::vector<Chance>> chances_over_inputs(
    const scenario::Scenario& scenario, const Design& design, const std::vector<BuildSize>& builds,
    std::uint64_t seed, unsigned threads = 0);

//   points   a power of two
// Points of a Sobol sequence in the unit cube, moved on together by a shift drawn from the seed.
[[nodiscard]] std::vector<std::vector<double>> quasi_random(int points, int coordinates,
                                                            std::uint64_t seed);

}  // namespace sizing
