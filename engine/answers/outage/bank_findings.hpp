// What befalls single packs of a bank whose packs differ, in the order in which it happens.
#pragma once

#include <string>
#include <vector>

#include "answers/answer.hpp"
#include "outage/plan.hpp"
#include "scenario/scenario.hpp"

namespace answers {

// One finding for the first pack that opens, telling the whole cascade that follows it.
[[nodiscard]] std::vector<PinnedFinding> bank_findings(const scenario::Scenario& scenario,
                                                       const outage::Plan& plan);

// " after 5 min above 100 A" of what opened on its current; nothing where it opened at once.
[[nodiscard]] std::string after_words(const outage::Event& event);

}  // namespace answers
