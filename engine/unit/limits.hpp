// What one pack may give and what it may take: all that its current passes between the cells and
// the bus. Every question that asks it, of whichever pack, asks here. method.md (6)
#pragma once

#include <optional>
#include <vector>

#include "unit/built.hpp"
#include "units/quantities.hpp"
#include "words/said.hpp"

namespace unit {

// Which way the current of a pack flows.
enum class Flow { out_of_pack, into_pack };

// What ends or suffers more than it bears. The protection looks at what leaves a pack alone, the
// limit of charging at what enters it alone; fuse, connector and contact stand both ways.
enum class Limiter { protection, charging, fuse, connector, contact };

//   most    borne forever, as stated or stamped; of one pack, never negative
//   guard   of a fuse: how it opens, and what warmth leaves of it
struct Limit {
    Limiter by = Limiter::fuse;
    Known<units::Current> most;
    std::optional<Guard> guard = {};
};
using Limits = std::vector<Limit>;

// Of a way between two places; in the order of Limiter, each at most once.
[[nodiscard]] Limits limits_of(const Path& path);

// Of one pack and its lead; likewise. What nobody states and no chemistry has a figure for is not
// there.
[[nodiscard]] Limits limits_of(const Packs& packs, Flow flow);

[[nodiscard]] const Limit* find(const Limits& limits, Limiter by);

// "fuse", "connector", "switch", "current limit", "charge limit"
[[nodiscard]] words::Said word_for(Limiter by);

}  // namespace unit
