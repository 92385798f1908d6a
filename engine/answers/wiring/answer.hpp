// Do fuse, wire, switch, connector and outlet suit what is drawn?
#pragma once

#include "answers/answer.hpp"
#include "fitting/ways.hpp"
#include "fitting/wiring.hpp"
#include "scenario/scenario.hpp"

namespace answers {

[[nodiscard]] Answer wiring_answer(const scenario::Scenario& scenario, const fitting::Fit& fit,
                                   const std::vector<fitting::WayOut>& ways);

// The finding a check makes; nothing for what fits.
[[nodiscard]] std::optional<PinnedFinding> finding_of(const fitting::Check& check);

// The build as a picture.
[[nodiscard]] WiringDiagram wiring_diagram(const scenario::Scenario& scenario,
                                           const fitting::Fit& fit);

// The hazards of building and mending it.
[[nodiscard]] std::vector<Caution> wiring_cautions(const scenario::Scenario& scenario,
                                                   const fitting::Fit& fit);

}  // namespace answers
