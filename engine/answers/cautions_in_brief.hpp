// Each caution in one short line, for paper that has no room for more.
#pragma once

#include "answers/answer.hpp"

namespace answers {

// What hurts, and what to do against it; nothing for a caution that has no short form.
[[nodiscard]] words::Said in_brief(const Caution& caution);

}  // namespace answers
