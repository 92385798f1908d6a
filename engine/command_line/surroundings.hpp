// What the operating system says of the terminal, and the one write of each text.
#pragma once

#include <string>
#include <string_view>

#include "command_line/run.hpp"

namespace command_line {

[[nodiscard]] Surroundings surroundings_of_this_process();

enum class Written { whole, reader_gone, failed };

// Writes all bytes to a file descriptor. A reader that has gone away is no failure.
[[nodiscard]] Written write_all(int descriptor, std::string_view text);

// Where standard output is the file of this name: takes off what lies behind so many bytes, which
// is a line that was cut off.
void cut_standard_output(const std::string& file, std::size_t bytes);

}  // namespace command_line
