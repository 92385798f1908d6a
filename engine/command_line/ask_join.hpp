// candlemark join FILE
#pragma once

#include "answers/answer.hpp"
#include "command_line/request.hpp"
#include "scenario/read.hpp"
#include "units/result.hpp"

namespace CLI {
class App;
}

namespace command_line {

void add_join_options(CLI::App& command, Request& request);

[[nodiscard]] units::Result<answers::Answer> ask_join(const scenario::ReadScenario& read,
                                                      const Request& request);

}  // namespace command_line
