// The plain answer to the sun question.
#pragma once

#include <string>
#include <vector>

#include "answers/sun/answer.hpp"

namespace answers {

// What comes back over the outage and on a day, what standing otherwise would bring, and how many
// panels still help.
[[nodiscard]] std::vector<words::Said> sun_sentences(const scenario::Scenario& scenario,
                                                     const questions::SunResults& results);

}  // namespace answers
