// Every picture of an answer as a drawing.
#pragma once

#include <string>
#include <vector>

#include "answers/answer.hpp"
#include "faces/drawing.hpp"

namespace faces {

// All but the wiring, which is a drawing of a size of its own (wiring_svg.hpp), in the order they
// are to be seen. The title of the scenario stands in theirs.
[[nodiscard]] std::vector<Drawing> drawings_of(const answers::Answer& answer);

// All of them, under each other; empty where the answer has no picture.
[[nodiscard]] std::string in_svg(const answers::Answer& answer);

}  // namespace faces
