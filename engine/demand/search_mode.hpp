// An inverter in search mode sleeps while what is plugged in draws less than its threshold: it does
// not wake for that, and what draws so little gets nothing until something larger runs beside it.
// method.md, "Search mode"
#pragma once

#include <vector>

#include "demand/demand.hpp"
#include "scenario/finding.hpp"
#include "scenario/scenario.hpp"

namespace demand {

// Takes off every outlet load, by the likely powers, the times in which all that runs together does
// not reach the threshold of demand.search_threshold; they are kept as `unwoken`.
void leave_asleep(Demand& demand);

// Steps in which the outlets draw less than the threshold: nothing is drawn there, and the inverter
// is asleep. Equal neighbours are joined.
[[nodiscard]] std::vector<DemandStep> with_search_mode(std::vector<DemandStep> steps,
                                                       units::Power threshold);

// What goes unfed because the inverter sleeps, for how long, first when; a stop for a medical load.
[[nodiscard]] scenario::Findings search_mode_findings(const scenario::Scenario& scenario,
                                                      const Demand& demand);

}  // namespace demand
