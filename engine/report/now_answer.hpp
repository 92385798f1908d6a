// Until when from now, in words and values.
#pragma once

#include "estimate/outlook.hpp"
#include "report/answer.hpp"
#include "scenario/scenario.hpp"
#include "units/time.hpp"

namespace report {

[[nodiscard]] Answer now_answer(const scenario::Scenario& scenario, units::LocalTime now,
                                const estimate::Outlook& outlook);

}  // namespace report
