// "What do my panels give back?" in finished words and numbers.
#pragma once

#include "answers/answer.hpp"
#include "questions/sun.hpp"
#include "scenario/scenario.hpp"

namespace answers {

// What each day gives back with its range, what other placements and other counts of panels would,
// and where adding panels stops helping.
//   gives   `defect` set when the energy account does not close
[[nodiscard]] Answer sun_answer(const scenario::Scenario& scenario,
                                const questions::SunResults& results);

}  // namespace answers
