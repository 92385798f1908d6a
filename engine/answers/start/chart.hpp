// The bars and the course of one start.
#pragma once

#include <string>

#include "answers/answer.hpp"
#include "starting/plan.hpp"

namespace answers {

[[nodiscard]] StartChart start_chart(const starting::LoadStart& start);

// "78 to 113 %"; above 999 % no more is told.
[[nodiscard]] std::string in_percent(const units::Range<starting::Utilised>& used);

}  // namespace answers
