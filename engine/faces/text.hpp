// An answer for people at a terminal. One screen of 80 x 24 to 30, or all of it.
#pragma once

#include <string>

#include "answers/answer.hpp"
#include "faces/page.hpp"

namespace faces {

// In the language of the look, whatever the answer is spoken in.
[[nodiscard]] std::string in_text(const answers::Answer& answer, const Look& look);

}  // namespace faces
