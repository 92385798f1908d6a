// What tells one thing said from another where they are kept in order: never shown to anybody.
#pragma once

#include <string>

#include "words/said.hpp"

namespace words {

// The same for the same saying with the same parts, another for any other; in no language.
[[nodiscard]] std::string identity_of(const Said& said);

}  // namespace words
