// What a person should know before relying on an outage plan, each pinned to its hour.
#pragma once

#include <span>
#include <string>
#include <string_view>
#include <vector>

#include "answers/answer.hpp"
#include "outage/plan.hpp"
#include "scenario/scenario.hpp"
#include "sizing/start_states.hpp"

namespace answers {

// The plan's own findings and those its likely course shows, worst first.
//   starts   how the packs stand at each of the plan's starts over the members; empty: as in the
//            likely course
[[nodiscard]] std::vector<PinnedFinding> outage_findings(
    const scenario::Scenario& scenario, const outage::Plan& plan,
    std::span<const sizing::StartState> starts = {});

// "the inverter switches off on low voltage", "out: lamp"
[[nodiscard]] std::string words_for(const outage::Plan& plan, const outage::Event& event);

// Whether much of what the packs take is not stored, as in lead-acid near full; and what to do.
[[nodiscard]] bool gasses_away(const outage::Ledger& ledger);
inline constexpr std::string_view instead_of_gassing =
    "Move loads that can wait into the sunny hours, or add a pack; let the gas out of the case";

}  // namespace answers
