// The bars and the course of one start.
#pragma once

#include "answers/answer.hpp"
#include "starting/plan.hpp"

namespace answers {

[[nodiscard]] StartChart start_chart(const starting::LoadStart& start);

}  // namespace answers
