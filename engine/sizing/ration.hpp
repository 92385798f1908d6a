// What switching off buys. Loads go from the least needed on, and the outage is run again after
// each step; an inverter that feeds nothing any more goes off too. What life and health hang on is
// never switched off, whatever priority the file gives it.
#pragma once

#include <string>
#include <vector>

#include "sizing/member_runs.hpp"
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
//   figures     of the members of the chance, with these loads off
struct RationStep {
    std::vector<ShedLoad> off;
    units::Energy spared{};
    bool inverter = false;
    chance::Figures figures = {};
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
//   members   the same as for the whole outage, so that `all_on` is its chance
[[nodiscard]] Ration ration(const chance::Members& members, units::Probability goal,
                            unsigned threads = 0);

// The outage on the way down the ladder, without one load and all above it.
//   packs_so_far   fewest in all that meet the goal, up to `most`; 0: none
struct Rung {
    ShedLoad off;
    int priority = 3;
    chance::Figures figures = {};
    int packs_so_far = 0;
};

// Load by load, from the lowest priority upwards; of one priority, what spares most comes first.
struct Ladder {
    std::vector<Rung> rungs;
};
[[nodiscard]] Ladder ration_ladder(const chance::Members& members, int most_packs,
                                   units::Probability goal, unsigned threads = 0);
// The same, of the members that `all_on` runs.
[[nodiscard]] Ladder ration_ladder(const MemberRuns& all_on, int most_packs,
                                   units::Probability goal, unsigned threads = 0);

}  // namespace sizing
