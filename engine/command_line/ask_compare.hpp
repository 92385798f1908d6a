// candlemark compare OLD NEW
#pragma once

#include "answers/answer.hpp"
#include "command_line/request.hpp"
#include "scenario/read.hpp"
#include "units/result.hpp"

namespace CLI {
class App;
}

namespace command_line {

void add_compare_options(CLI::App& command, Request& request);

//   fails   where either file cannot be used; the second one's errors name it
[[nodiscard]] units::Result<answers::Answer> ask_compare(const scenario::ReadScenario& read,
                                                         const Request& request);

}  // namespace command_line
