// "How long does it last?" in finished words and numbers.
#pragma once

#include <optional>
#include <vector>

#include "outage/plan.hpp"
#include "report/answer.hpp"
#include "scenario/scenario.hpp"

namespace report {

// What many likely weathers make of the same outage.
struct Chances {
    units::Duration p10{};  // nine outages in ten last longer
    units::Duration p50{};
    units::Duration p90{};  // one outage in ten lasts longer
    units::Probability of_lasting;
    int outages = 0;  // that were tried
};

// The whole answer of the outage question.
//   takes      more: what 1, 2, … more packs give; empty when not asked for
//              chances: absent gives null with a reason
//   gives      `defect` set when the energy account of any course does not close
[[nodiscard]] Answer outage_answer(const scenario::Scenario& scenario, const outage::Plan& plan,
                                   const std::vector<outage::MorePacks>& more,
                                   const std::optional<Chances>& chances = {});

}  // namespace report
