// Does every fuse, wire, switch, connector and outlet suit what is drawn?
#pragma once

#include <vector>

#include "fitting/ways.hpp"
#include "fitting/wiring.hpp"
#include "questions/asked.hpp"
#include "scenario/file/read.hpp"
#include "units/result.hpp"

namespace questions {

//   ways   out of what does not fit
struct WiringFound {
    scenario::Scenario scenario;
    fitting::Fit fit;
    std::vector<fitting::WayOut> ways = {};
    scenario::Assumptions assumed = {};  // for the room
};

//   fails   as draws_of and fitting::fit
[[nodiscard]] units::Result<WiringFound> find(const scenario::ReadScenario& read,
                                              const WiringAsked& asked, const How& how);

}  // namespace questions
