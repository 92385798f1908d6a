// candlemark note: writes what was read, done or seen behind the file's text.
#pragma once

#include "answers/answer.hpp"
#include "command_line/request.hpp"
#include "scenario/read.hpp"
#include "units/result.hpp"

namespace CLI {
class App;
}

namespace command_line {

void add_note_options(CLI::App& command, Request& request);
// Writes all lines of the request or none of them.
//   fails   where a line is not understood or contradicts the file, or the file cannot be written
[[nodiscard]] units::Result<answers::Answer> ask_note(const scenario::ReadScenario& read,
                                                      const Request& request);

}  // namespace command_line
