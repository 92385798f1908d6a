// candlemark join FILE
#pragma once

#include "command_line/request.hpp"
#include "questions/asked.hpp"
#include "scenario/read.hpp"
#include "units/result.hpp"

namespace CLI {
class App;
}

namespace command_line {

void add_join_options(CLI::App& command, Request& request);

[[nodiscard]] units::Result<questions::Asked> join_asked(const scenario::ReadScenario& read,
                                                         const Request& request);

}  // namespace command_line
