// What becomes of what the panels give, each share by its name.
#pragma once

#include "answers/answer.hpp"
#include "sizing/sun_return.hpp"

namespace answers {

//   part   of all that is told, such as that of one day
[[nodiscard]] Members sun_shares(const sizing::SunShares& shares, double part = 1.0);

}  // namespace answers
