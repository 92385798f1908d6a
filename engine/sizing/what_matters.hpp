// How much each uncertain input moves the end of the outage, and what each load costs.
#pragma once

#include <string>
#include <vector>

#include "outage/ready.hpp"
#include "units/quantities.hpp"

namespace sizing {

// One input at either end of its range, all others likely, the sky typical.
//   spread      how much longer it lasts at the better end than at the worse one
struct Influence {
    std::string input;     // "refrigerator"
    std::string what;      // what is moved, and how far: "18 W to 60 W while it runs"
    std::size_t load = 0;  // of the scenario; only where is_load
    bool is_load = false;
    units::Duration at_worst{};
    units::Duration at_best{};
    [[nodiscard]] units::Duration spread() const { return at_best - at_worst; }
};

// The one that moves it most comes first. Inputs without a range are left out, and those that make
// less than a minute's difference: all of them where it lasts through either way.
[[nodiscard]] std::vector<Influence> influences(const outage::Ready& ready);

// The outage without one load, and on the way down the ladder without it and all above it.
//   spared       of the load's energy on a mean day, at its own plug
//   lasts_alone, lasts_so_far   the likely course
//   packs_alone, packs_so_far   fewest that carry the likely course through, up to `most`; 0: none
struct Rung {
    std::size_t load = 0;
    std::string name;
    int priority = 3;
    units::Energy spared{};
    units::Duration lasts_alone{};
    units::Duration lasts_so_far{};
    int packs_alone = 0;
    int packs_so_far = 0;
};

// From the lowest priority upwards; of one priority, what spares most comes first. Loads of
// priority 1 keep somebody well or alive: the ladder ends before them.
struct Ladder {
    units::Duration lasts{};  // with everything on
    int packs = 0;
    std::vector<Rung> rungs;
};

[[nodiscard]] Ladder ration_ladder(const outage::Ready& ready, int most_packs);

}  // namespace sizing
