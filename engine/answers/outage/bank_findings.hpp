// What befalls single packs of a bank whose packs differ, in the order in which it happens.
#pragma once

#include <vector>

#include "answers/answer.hpp"
#include "outage/plan.hpp"
#include "scenario/scenario.hpp"

namespace answers {

// One finding for the first pack that opens, telling the whole cascade that follows it.
[[nodiscard]] std::vector<PinnedFinding> bank_findings(const scenario::Scenario& scenario,
                                                       const outage::Plan& plan);

// Whether what opened on its current bore it for a while.
[[nodiscard]] bool opens_late(const outage::Event& event);

// "131 A after 5 min above 100 A", "40 A of charge": the current on which something opened.
[[nodiscard]] words::Said current_that_opens(const outage::Event& event);

}  // namespace answers
