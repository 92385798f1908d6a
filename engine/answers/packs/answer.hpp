// The answer to how many packs, and panels, to build.
#pragma once

#include "answers/answer.hpp"
#include "questions/packs.hpp"

namespace answers {

[[nodiscard]] Answer packs_answer(const questions::PacksFound& found);

}  // namespace answers
