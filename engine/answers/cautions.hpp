// The hazards a scenario touches, in the order of how fast they hurt.
#pragma once

#include <vector>

#include "answers/answer.hpp"
#include "scenario/scenario.hpp"

namespace answers {

[[nodiscard]] std::vector<Caution> cautions_for(const scenario::Scenario& scenario);

// A load that is usually wired into the house: a furnace blower, a well or sump pump.
[[nodiscard]] bool is_usually_hard_wired(const scenario::Load& load);

}  // namespace answers
