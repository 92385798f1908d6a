// What a person should know of food that is kept cold: what hours off save and what they cost.
#pragma once

#include <optional>

#include "demand/demand.hpp"
#include "inverter/model.hpp"
#include "scenario/finding.hpp"
#include "scenario/scenario.hpp"

namespace demand {

//   takes      demand, planned from the same scenario; inverter, its model where it has one
//   gives      of each refrigerator and freezer: what its hours off save; the food clock they
//              start; hours that are too few, or a room too warm, to keep it cold; a room that was
//              assumed although the packs' is told to be warmer
[[nodiscard]] scenario::Findings cold_findings(const scenario::Scenario& scenario,
                                               const Demand& demand,
                                               const std::optional<inverter::Model>& inverter);

}  // namespace demand
