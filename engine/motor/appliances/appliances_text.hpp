// The text of appliances.toml, compiled in.
#pragma once

#include <string_view>

namespace motor {

extern const std::string_view appliances_text;

}  // namespace motor
