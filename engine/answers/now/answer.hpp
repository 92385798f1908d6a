// Until when from now, in words and values.
#pragma once

#include "answers/answer.hpp"
#include "estimate/outlook.hpp"
#include "scenario/scenario.hpp"
#include "units/time.hpp"

namespace answers {

[[nodiscard]] Answer now_answer(const scenario::Scenario& scenario, units::LocalTime now,
                                const estimate::Outlook& outlook);

}  // namespace answers
