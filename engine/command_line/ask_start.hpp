// candlemark start FILE
#pragma once

#include "command_line/request.hpp"
#include "questions/asked.hpp"
#include "scenario/read.hpp"
#include "units/result.hpp"

namespace command_line {

[[nodiscard]] units::Result<questions::Asked> start_asked(const scenario::ReadScenario& read,
                                                          const Request& request);

}  // namespace command_line
