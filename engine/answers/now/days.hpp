// The days of an outage that is being lived through, as a chart: what burnt so far, and from now on
// what the readings leave open.
#pragma once

#include "answers/answer.hpp"
#include "estimate/outlook.hpp"
#include "scenario/scenario.hpp"

namespace answers {

//   takes   an outlook with its fan
//   gives   curves, hours and nights of the whole outage; its hours `burns` are after the start
[[nodiscard]] DaysChart now_days(const scenario::Scenario& scenario,
                                 const estimate::Outlook& outlook);

}  // namespace answers
