// candlemark gauge FILE
#pragma once

#include "command_line/questions.hpp"

namespace command_line {

[[nodiscard]] Question gauge_question();

}  // namespace command_line
