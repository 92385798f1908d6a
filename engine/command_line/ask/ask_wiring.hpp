// candlemark wiring FILE
#pragma once

#include "command_line/questions.hpp"

namespace command_line {

[[nodiscard]] Question wiring_question();

}  // namespace command_line
