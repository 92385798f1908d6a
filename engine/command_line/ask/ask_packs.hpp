// candlemark packs FILE
#pragma once

#include "command_line/questions.hpp"

namespace command_line {

[[nodiscard]] Question packs_question();

}  // namespace command_line
