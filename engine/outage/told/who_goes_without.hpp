// Which loads a course leaves without, from when to when and why. method.md (15)
#pragma once

#include <vector>

#include "demand/demand.hpp"
#include "outage/course.hpp"
#include "outage/plan.hpp"

namespace outage {

// Fills goes_without and fed.
//   uses   one for each load of the demand, in its order
void tell_who_goes_without(std::vector<LoadUse>& uses, const demand::Demand& demand,
                           const Course& course);

// By rank, the first first.
//   all   the course with every load
[[nodiscard]] std::vector<LadderStep> ladder_of(const Ready& ready, const Course& all);

}  // namespace outage
