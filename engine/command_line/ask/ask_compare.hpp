// candlemark compare FILE
#pragma once

#include "command_line/questions.hpp"

namespace command_line {

[[nodiscard]] Question compare_question();

}  // namespace command_line
