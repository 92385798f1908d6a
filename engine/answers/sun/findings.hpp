// What a person should know before relying on the sun.
#pragma once

#include <vector>

#include "answers/sun/answer.hpp"

namespace answers {

// The findings of place, weather file and panels, and what the answer itself shows; worst first.
[[nodiscard]] std::vector<PinnedFinding> sun_findings(const scenario::Scenario& scenario,
                                                      const questions::SunResults& results);

}  // namespace answers
