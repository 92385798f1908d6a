// What an outage taught, in words and values.
#pragma once

#include <optional>
#include <string>

#include "answers/answer.hpp"
#include "estimate/learnt.hpp"
#include "scenario/scenario.hpp"

namespace answers {

//   taken   the value that was written into the file; nothing where none was
[[nodiscard]] Answer learnt_answer(const scenario::Scenario& scenario,
                                   const estimate::Learnt& learnt,
                                   const std::optional<estimate::LearntValue>& taken = {});

// "learnt in the outage of 14 January 2026, 5 readings: 1.21 of what was here, 440 kWh/yr".
[[nodiscard]] words::Said where_it_came_from(const scenario::Scenario& scenario,
                                             const estimate::Learnt& learnt,
                                             const estimate::LearntValue& value);

}  // namespace answers
