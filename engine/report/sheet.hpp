// An answer as a page to print: HTML that needs nothing from elsewhere, black on white, A4 or
// Letter.
#pragma once

#include <string>

#include "report/answer.hpp"

namespace report {

// The sentences, the diagram, the tables that are brief and "links", findings, what was assumed,
// cautions and the closing line.
[[nodiscard]] std::string in_html(const Answer& answer);

}  // namespace report
