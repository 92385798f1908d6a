// What the inverter spends on standing ready, told from the course as it went: an inverter that is
// off, asleep, cut off or without supply spends nothing.
#pragma once

#include "demand/demand.hpp"
#include "inverter/model.hpp"
#include "outage/course.hpp"
#include "scenario/finding.hpp"

namespace outage {

// Hours in which it stood on with nothing to feed, or only for what a 12 V or USB outlet could
// feed.
//   course   with intervals; the idle of each says how much of it the inverter ran
[[nodiscard]] scenario::Findings idle_findings(const demand::Demand& demand,
                                               const inverter::Model& inverter,
                                               const Course& course);

}  // namespace outage
