// candlemark now FILE
#pragma once

#include "command_line/questions.hpp"

namespace command_line {

[[nodiscard]] Question now_question();

}  // namespace command_line
