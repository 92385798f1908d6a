// An answer for people at a terminal. One screen of 80 x 24 to 30, or all of it.
#pragma once

#include <string>

#include "report/answer.hpp"
#include "report/page.hpp"

namespace report {

[[nodiscard]] std::string in_text(const Answer& answer, const Look& look);

}  // namespace report
