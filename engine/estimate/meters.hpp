// Plug-in meters: each is on one load alone, so what it says of that load is said in closed form.
// method.md (2)
#pragma once

#include <optional>
#include <vector>

#include "chance/world.hpp"
#include "estimate/closed_form.hpp"
#include "estimate/story.hpp"
#include "scenario/scenario.hpp"

namespace estimate {

// What a meter says of a load.
//   factor     of its draw over the plan's, in logarithms: before and after
//   surprise   of the reading
struct Metered {
    std::size_t entry = 0;
    std::size_t load = 0;
    Normal before;
    Normal after;
    double surprise = 0.0;
};

// In the order of the log's times; several of one load go one after another. A meter on a load that
// the plan has off for all of its time is left out.
[[nodiscard]] std::vector<Metered> metered(const scenario::Scenario& scenario, const Story& story,
                                           const chance::World& world);

// Mean draw of a load over a time, as the plan has it; nothing where it does not run then.
[[nodiscard]] std::optional<units::Power> planned_mean(const demand::PlannedLoad& load,
                                                       const demand::Span& within);

}  // namespace estimate
