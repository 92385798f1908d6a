// candlemark learnt: what an outage taught, and the one value that is taken into the file.
#pragma once

#include "answers/answer.hpp"
#include "command_line/request.hpp"
#include "scenario/read.hpp"
#include "units/result.hpp"

namespace CLI {
class App;
}

namespace command_line {

void add_learnt_options(CLI::App& command, Request& request);
//   fails   where the log is empty, --take names no value that is offered, or the file cannot be
//           written
[[nodiscard]] units::Result<answers::Answer> ask_learnt(const scenario::ReadScenario& read,
                                                        const Request& request);

}  // namespace command_line
