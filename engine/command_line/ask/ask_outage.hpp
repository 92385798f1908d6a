// candlemark outage FILE
#pragma once

#include "command_line/questions.hpp"

namespace command_line {

[[nodiscard]] Question outage_question();

}  // namespace command_line
