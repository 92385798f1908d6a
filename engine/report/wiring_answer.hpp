// Do fuse, wire, switch, connector and outlet suit what is drawn?
#pragma once

#include "checks/wiring.hpp"
#include "checks/wiring_ways.hpp"
#include "report/answer.hpp"
#include "scenario/scenario.hpp"

namespace report {

[[nodiscard]] Answer wiring_answer(const scenario::Scenario& scenario, const checks::Fit& fit,
                                   const std::vector<checks::WayOut>& ways);

// The finding a check makes; nothing for what fits.
[[nodiscard]] std::optional<PinnedFinding> finding_of(const checks::Check& check);

// The build as a picture.
[[nodiscard]] WiringDiagram wiring_diagram(const scenario::Scenario& scenario,
                                           const checks::Fit& fit);

// The hazards of building and mending it.
[[nodiscard]] std::vector<Caution> wiring_cautions(const scenario::Scenario& scenario,
                                                   const checks::Fit& fit);

}  // namespace report
