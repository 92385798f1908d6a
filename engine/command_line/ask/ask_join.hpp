// candlemark join FILE
#pragma once

#include "command_line/questions.hpp"

namespace command_line {

[[nodiscard]] Question join_question();

}  // namespace command_line
