// What switching off buys: loads are dropped from the least needed on, work first, and the outage
// is run again after each step. What life and health hang on is never dropped.
#pragma once

#include <string>
#include <vector>

#include "scenario/scenario.hpp"
#include "units/quantities.hpp"
#include "units/result.hpp"

namespace report {

struct RationLoad {
    std::string name;
    units::Energy per_day{};  // taken on a mean day, at the appliance
};

//   off         what goes off in this step, beside that of the steps before
//   per_day     what it takes on a mean day, all together
//   inverter    nothing is left on its outlets: it is switched off as well
//   lasts       until the supply first fails, likely; at most the outage
//   lasts_low   the same with every doubtful figure at its hungry end
struct RationStep {
    std::vector<RationLoad> off;
    units::Energy per_day{};
    bool inverter = false;
    units::Duration lasts{};
    units::Duration lasts_low{};
    bool survives = false;
    bool survives_low = false;
};

//   all_on   nothing dropped; `off` is empty
//   steps    in the order to take them; none where all loads are of one rank
//   kept     what stays on after the last step
//   vital    something kept is of life and health, and stays on whatever else does
struct Ration {
    RationStep all_on;
    std::vector<RationStep> steps;
    std::vector<RationLoad> kept;
    bool vital = false;
};

// A step is all loads of one priority, 5 first; the lowest number present stays on.
//   folder   of the scenario's file, against which it names others
//   fails    where the outage cannot be planned
[[nodiscard]] units::Result<Ration> ration(const scenario::Scenario& scenario,
                                           const std::string& folder);

}  // namespace report
