// candlemark note FILE
#pragma once

#include "command_line/questions.hpp"

namespace command_line {

[[nodiscard]] Question note_question();

}  // namespace command_line
