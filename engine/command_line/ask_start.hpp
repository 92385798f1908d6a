// candlemark start FILE
#pragma once

#include "command_line/request.hpp"
#include "report/answer.hpp"
#include "scenario/read.hpp"
#include "units/result.hpp"

namespace command_line {

[[nodiscard]] units::Result<report::Answer> ask_start(const scenario::ReadScenario& read,
                                                      const Request& request);

}  // namespace command_line
