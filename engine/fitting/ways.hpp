// The smallest changes that would let a failing circuit pass, each tried on the whole build anew.
#pragma once

#include <string>
#include <vector>

#include "fitting/wiring.hpp"
#include "scenario/scenario.hpp"

namespace fitting {

struct WayOut {
    std::string circuit;
    words::Said change;  // "a 5 A fuse instead of 10 A"
    words::Said result;  // what the checks find then, in numbers
};

// For each circuit that fails: those of the next fuse, the next wire, a stronger part, two runs,
// twice the voltage, and a lower power that pass, in this order. None where nothing tried passes.
[[nodiscard]] std::vector<WayOut> ways_out(const scenario::Scenario& scenario, const Draws& draws,
                                           const Fit& fit);

}  // namespace fitting
