// Reading a course between its points: straight lines, and jumps where two points share an instant.
#pragma once

#include <vector>

#include "outage/course.hpp"
#include "units/quantities.hpp"

namespace report {

using Trace = std::vector<outage::TracePoint>;

// The state at a moment; after the jump where there is one. The first or last point beyond the
// ends.
//   takes   a trace in time order, not empty
[[nodiscard]] outage::TracePoint state_at(const Trace& trace, units::Duration at);

// The mean of a power from one moment to a later one.
[[nodiscard]] units::Power mean_power(const Trace& trace, units::Power outage::TracePoint::*power,
                                      units::Duration from, units::Duration to);

}  // namespace report
