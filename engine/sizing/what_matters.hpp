// What decides whether it lasts: how often the verdict changes when one thing that is not known
// turns out otherwise. chance/method.md
#pragma once

#include <string>
#include <vector>

#include "sizing/member_runs.hpp"
#include "units/quantities.hpp"

namespace sizing {

//   input   "refrigerator"
//   what    what it may be, four times in five: "18 W to 60 W while it runs"
//   load    of the scenario; only where is_load
//   flips   share of members whose verdict changes when this alone is drawn anew
struct Influence {
    words::Said input;
    words::Said what;
    std::size_t load = 0;
    bool is_load = false;
    units::Probability flips{};
};

// Of the build with so many packs and panels; what decides most comes first. Where there are many
// loads, those that matter most by their energy and how little is known of it; what never changes
// a verdict is left out.
//   ends   of the members with this build
[[nodiscard]] std::vector<Influence> influences(const chance::Members& members,
                                                const std::vector<chance::MemberEnd>& ends,
                                                int packs, int panels, unsigned threads = 0);

}  // namespace sizing
