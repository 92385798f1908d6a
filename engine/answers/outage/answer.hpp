// "How long does it last?" in finished words and numbers.
#pragma once

#include <optional>
#include <string>
#include <vector>

#include "answers/answer.hpp"
#include "answers/outage/chance.hpp"
#include "outage/plan.hpp"
#include "questions/shared/outage_starts.hpp"
#include "scenario/scenario.hpp"

namespace answers {

// The whole answer of the outage question.
//   takes      more: what 1, 2, … more packs give; empty when not asked for
//              chance: absent gives null with a reason, and the headline is that of the likely
//              course
//   gives      `defect` set when the energy account of any course does not close
[[nodiscard]] Answer outage_answer(const scenario::Scenario& scenario, const outage::Plan& plan,
                                   const std::vector<outage::MorePacks>& more,
                                   const std::optional<questions::OutageChance>& chance = {},
                                   const questions::OutageStarts& starts = {});

}  // namespace answers
