// candlemark read FILE
#pragma once

#include "command_line/questions.hpp"

namespace command_line {

[[nodiscard]] Question read_question();

}  // namespace command_line
