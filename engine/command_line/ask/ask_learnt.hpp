// candlemark learnt FILE
#pragma once

#include "command_line/questions.hpp"

namespace command_line {

[[nodiscard]] Question learnt_question();

}  // namespace command_line
