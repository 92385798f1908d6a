// What differs between two builds: parts, checks that this dirties, verdicts that moved, runtime,
// weight and price; words first.
#pragma once

#include "answers/answer.hpp"
#include "questions/compare.hpp"

namespace answers {

[[nodiscard]] Answer compare_answer(const questions::CompareFound& found);

}  // namespace answers
