// candlemark now: until when from now, what goes off next, what to read next.
#pragma once

#include "answers/answer.hpp"
#include "command_line/request.hpp"
#include "scenario/read.hpp"
#include "units/result.hpp"

namespace CLI {
class App;
}

namespace command_line {

void add_now_options(CLI::App& command, Request& request);
//   fails   where the moment lies outside of the outage, or the outage cannot be planned
[[nodiscard]] units::Result<answers::Answer> ask_now(const scenario::ReadScenario& read,
                                                     const Request& request);

}  // namespace command_line
