// The wiring diagram as a drawing of its own, black on white, for print and screen. Severity is
// told by a word and a shape beside each colour.
#pragma once

#include <string>

#include "answers/answer.hpp"
#include "faces/drawing.hpp"

namespace faces {

[[nodiscard]] std::string in_svg(const answers::WiringDiagram& diagram, const std::string& title);

}  // namespace faces
