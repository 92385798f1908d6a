// "May I plug this pack onto that unit now?" in words and numbers.
#pragma once

#include "answers/answer.hpp"
#include "handling/join.hpp"
#include "scenario/scenario.hpp"

namespace answers {

[[nodiscard]] Answer join_answer(const scenario::Scenario& scenario,
                                 const handling::Joining& joining);

}  // namespace answers
