// The plain answer to the outage question, as clock times no sharper than they are known.
#pragma once

#include <string>
#include <string_view>
#include <vector>

#include "answers/answer.hpp"
#include "outage/plan.hpp"
#include "scenario/scenario.hpp"

namespace answers {

// "Lasts until Thursday 03:00 (between Wednesday 21:00 and Thursday 09:00); then …", what more
// packs would do, and what the hungry end would be where the likely course lasts.
[[nodiscard]] std::vector<words::Said> outage_sentences(const scenario::Scenario& scenario,
                                                        const outage::Plan& plan,
                                                        const std::vector<outage::MorePacks>& more);

// What becomes of the loads beside the chance: "On likely figures without supply: heater from 19:06
// (8 min missing). Everything else lasts; 19 % is left."
[[nodiscard]] std::vector<words::Said> course_sentences(const scenario::Scenario& scenario,
                                                        const outage::Plan& plan);

// What ended it, or why a load went without: "low_voltage" for a program, a clause for a person.
[[nodiscard]] Code code_of(outage::LimitedBy limit);

}  // namespace answers
