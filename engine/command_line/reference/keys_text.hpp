// The words of `candlemark keys`: what a key of the scenario file means and takes.
#pragma once

#include <string>

#include "units/result.hpp"
#include "words/language.hpp"

namespace command_line {

//   takes  nothing, which lists every key in a line; a table, such as "pack"; a key by its whole
//          name, "pack.capacity", or by its last word, "capacity", which may be of several tables
//   fails  where no key is named so, with the nearest
[[nodiscard]] units::Result<std::string> keys_text(
    const std::string& asked, int columns, const words::Language& language = words::english());

}  // namespace command_line
