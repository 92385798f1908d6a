// candlemark read FILE
#pragma once

#include "answers/answer.hpp"
#include "command_line/request.hpp"
#include "scenario/read.hpp"
#include "units/result.hpp"

namespace command_line {

[[nodiscard]] units::Result<answers::Answer> ask_read(const scenario::ReadScenario& read,
                                                      const Request& request);

}  // namespace command_line
