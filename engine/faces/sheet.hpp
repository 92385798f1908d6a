// An answer as a page to print: HTML that needs nothing from elsewhere, black on white, A4 or
// Letter.
#pragma once

#include <string>

#include "answers/answer.hpp"
#include "words/language.hpp"

namespace faces {

// The sentences, the diagram, the tables that are brief and "links", findings, what was assumed,
// cautions and the closing line.
[[nodiscard]] std::string in_html(const answers::Answer& answer,
                                  const words::Language& language = words::english());

}  // namespace faces
