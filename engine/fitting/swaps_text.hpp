// The text of swaps.toml, compiled in.
#pragma once

#include <string_view>

namespace fitting {

extern const std::string_view swaps_text;

}  // namespace fitting
