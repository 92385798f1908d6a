// A chance counted over the start dates of a weather file is known less well than their number
// says.
#pragma once

#include "report/outage_answer.hpp"
#include "units/quantities.hpp"

namespace report {

// The same chance with the interval that so many start dates are worth: they share days.
//   lasts  of the outage; solar/method.md (49)
[[nodiscard]] Chances of_start_dates(Chances counted, units::Duration lasts);

}  // namespace report
