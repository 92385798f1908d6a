// What the tables of this part say of their sources, as sayings.
#pragma once

#include <string>

#include "words/said.hpp"

namespace wiring {

// A source of a table; what has no words of its own, such as "[NEC] 400.5(A)(1)", is taken as it is.
[[nodiscard]] words::Said said_of_tables(const std::string& text);

}  // namespace wiring
