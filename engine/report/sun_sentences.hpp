// The plain answer to the sun question.
#pragma once

#include <string>
#include <vector>

#include "report/sun_answer.hpp"

namespace report {

// What comes back over the outage and on a day, what standing otherwise would bring, and how many
// panels still help.
[[nodiscard]] std::vector<std::string> sun_sentences(const scenario::Scenario& scenario,
                                                     const SunResults& results);

}  // namespace report
