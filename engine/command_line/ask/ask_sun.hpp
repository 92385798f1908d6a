// candlemark sun FILE
#pragma once

#include "command_line/questions.hpp"

namespace command_line {

[[nodiscard]] Question sun_question();

}  // namespace command_line
