// The wiring diagram as a drawing of its own, black on white, for print and screen. Severity is
// told by a word and a shape beside each colour.
#pragma once

#include <string>

#include "answers/answer.hpp"

namespace faces {

[[nodiscard]] std::string in_svg(const answers::WiringDiagram& diagram, const std::string& title);

// Text with the characters that XML keeps for itself written as entities; control characters, which
// it does not have, as "?".
[[nodiscard]] std::string in_xml(std::string_view text);

}  // namespace faces
