// What a person should know before relying on an outage plan, each pinned to its hour.
#pragma once

#include <string_view>
#include <vector>

#include "outage/plan.hpp"
#include "report/answer.hpp"
#include "scenario/scenario.hpp"

namespace report {

// The plan's own findings and those its likely course shows, worst first.
[[nodiscard]] std::vector<PinnedFinding> outage_findings(const scenario::Scenario& scenario,
                                                         const outage::Plan& plan);

// "the inverter switches off on low voltage"
[[nodiscard]] std::string_view words_for(outage::EventKind kind);

}  // namespace report
