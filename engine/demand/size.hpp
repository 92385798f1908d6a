// How often loads may switch in one outage, so that every question answers within seconds.
#pragma once

#include "scenario/scenario.hpp"
#include "units/result.hpp"

namespace demand {

// Times at which loads switch in one outage, all together.
inline constexpr double most_switchings = 40'000.0;

// Items of one cycling load that start apart; more of them switch in as many groups.
inline constexpr int most_strands = 32;

// At every load that switches too often together with the others; none where they do not.
[[nodiscard]] units::Errors too_many_switchings(const scenario::Scenario& scenario);

}  // namespace demand
