// What a person should know of the loads and their hours before the clock is run.
#pragma once

#include <optional>

#include "demand/demand.hpp"
#include "inverter/model.hpp"
#include "scenario/finding.hpp"
#include "scenario/scenario.hpp"

namespace demand {

//   takes      demand, planned from the same scenario; inverter, its model where it has one
//   gives      loads asked for while the inverter is off; the inverter kept on for little or
//              nothing; a waveform that motors or medical devices may not bear; loads that together exceed
//              the inverter; draws that are only known roughly
[[nodiscard]] scenario::Findings demand_findings(const scenario::Scenario& scenario,
                                                 const Demand& demand,
                                                 const std::optional<inverter::Model>& inverter);

}  // namespace demand
