// What appliances.toml says in words, as sayings.
#pragma once

#include <string>

#include "words/said.hpp"

namespace motor {

// A name, a note or a source of appliances.toml; what is not one of its own is taken as it is.
[[nodiscard]] words::Said said_of_appliances(const std::string& text);

}  // namespace motor
