// The wiring diagram as a drawing of its own, black on white, for print and screen. Severity is
// told by a word and a shape beside each colour.
#pragma once

#include <string>

#include "answers/answer.hpp"
#include "faces/pictures/drawing.hpp"
#include "words/language.hpp"

namespace faces {

[[nodiscard]] std::string in_svg(const answers::WiringDiagram& diagram, const std::string& title,
                                 const words::Language& language = words::english());

}  // namespace faces
