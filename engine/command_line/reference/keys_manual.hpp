// The manual page candlemark-scenario(5): the file format, made of the descriptions of the keys.
#pragma once

#include <string>

namespace command_line {

// For man(1).
//   source   [man-pages(7)] for the order of the sections
[[nodiscard]] std::string keys_manual();

}  // namespace command_line
