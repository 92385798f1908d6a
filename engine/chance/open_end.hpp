// The chance that an outage is over, where nobody knows how long it lasts. method.md (16)
#pragma once

#include "chance/members.hpp"
#include "scenario/scenario.hpp"
#include "units/quantities.hpp"

namespace chance {

// That it is over so long after it began: a log-normal spread around the median, as measured of
// the outages of four utilities [Ahmad 2026].
//   after          at least nothing
//   half_over_by   its median, above zero
[[nodiscard]] units::Probability over_by(units::Duration after, units::Duration half_over_by);

// Of one that nobody knows: that it is still out so long after the moment from which the outage is
// reckoned.
[[nodiscard]] units::Probability still_out(const scenario::Outage& outage, units::Duration after);

// That a member that ends so has lasted to the outage's end: for a length that is known 0 or 1; of
// one that nobody knows the share of lengths that are over before.
[[nodiscard]] units::Probability outlasts(const scenario::Outage& outage, const MemberEnd& end);

}  // namespace chance
