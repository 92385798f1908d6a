// candlemark storage FILE
#pragma once

#include "command_line/questions.hpp"

namespace command_line {

[[nodiscard]] Question storage_question();

}  // namespace command_line
