// What a person should know before relying on an outage plan, each pinned to its hour.
#pragma once

#include <vector>

#include "answers/answer.hpp"
#include "outage/plan.hpp"
#include "questions/shared/outage_starts.hpp"
#include "scenario/scenario.hpp"

namespace answers {

// The plan's own findings and those its likely course shows, worst first.
[[nodiscard]] std::vector<PinnedFinding> outage_findings(
    const scenario::Scenario& scenario, const outage::Plan& plan,
    const questions::OutageStarts& starts = {});

// "the inverter switches off on low voltage", "out: lamp"
[[nodiscard]] words::Said words_for(const outage::Plan& plan, const outage::Event& event);

// Whether much of what the packs take is not stored, as in lead-acid near full; and what to do.
[[nodiscard]] bool gasses_away(const outage::Ledger& ledger);
[[nodiscard]] words::Said gassing_in_words(const outage::Ledger& ledger);
[[nodiscard]] words::Said instead_of_gassing();

}  // namespace answers
