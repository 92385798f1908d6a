// What switching off buys. Loads go from the least needed on, and the outage is run again after
// each step; an inverter that feeds nothing any more goes off too. What life and health hang on is
// never switched off, whatever priority the file gives it.
#pragma once

#include <string>
#include <vector>

#include "outage/ready.hpp"
#include "units/quantities.hpp"

namespace sizing {

//   spared   of its energy on a mean day, at its own plug
struct ShedLoad {
    std::size_t load = 0;  // of the scenario
    std::string name;
    units::Energy spared{};
};

//   off         what goes off in this step, beside that of the steps before
//   spared      by all of them
//   inverter    nothing is left on its outlets: it is switched off as well
//   lasts       until the supply first fails, likely; at most the outage
//   lasts_low   the same with every doubtful figure at its hungry end
struct RationStep {
    std::vector<ShedLoad> off;
    units::Energy spared{};
    bool inverter = false;
    units::Duration lasts{};
    units::Duration lasts_low{};
    bool survives = false;
    bool survives_low = false;
};

//   all_on   nothing switched off; `off` is empty
//   steps    in the order to take them; none where all loads are of one rank
//   kept     what stays on after the last step
//   vital    something kept is of life and health, and stays on whatever else does
struct Ration {
    RationStep all_on;
    std::vector<RationStep> steps;
    std::vector<ShedLoad> kept;
    bool vital = false;
};

// Rank by rank: a step is all loads of one priority, 5 first; the lowest number present stays on.
[[nodiscard]] Ration ration(const outage::Ready& ready);

// The outage without one load, and on the way down the ladder without it and all above it.
//   lasts_alone, lasts_so_far   the likely course
//   packs_alone, packs_so_far   fewest that carry the likely course through, up to `most`; 0: none
struct Rung {
    ShedLoad off;
    int priority = 3;
    units::Duration lasts_alone{};
    units::Duration lasts_so_far{};
    int packs_alone = 0;
    int packs_so_far = 0;
};

// Load by load, from the lowest priority upwards; of one priority, what spares most comes first.
struct Ladder {
    units::Duration lasts{};  // with everything on
    int packs = 0;
    std::vector<Rung> rungs;
};
[[nodiscard]] Ladder ration_ladder(const outage::Ready& ready, int most_packs);

}  // namespace sizing
