// "May I plug this pack onto that unit now?" in finished words and numbers.
#pragma once

#include "handling/join.hpp"
#include "report/answer.hpp"
#include "scenario/scenario.hpp"

namespace report {

[[nodiscard]] Answer join_answer(const scenario::Scenario& scenario,
                                 const handling::Joining& joining);

}  // namespace report
