// candlemark start FILE
#pragma once

#include "command_line/questions.hpp"

namespace command_line {

[[nodiscard]] Question start_question();

}  // namespace command_line
