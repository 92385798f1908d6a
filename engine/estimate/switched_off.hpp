// The plan with loads switched off for times. method.md (10)
#pragma once

#include <memory>
#include <vector>

#include "outage/demand_hours.hpp"
#include "outage/ready.hpp"

namespace estimate {

// Itself where nothing was off.
//   story, more   times, by load of the scenario; either may be empty
[[nodiscard]] std::shared_ptr<const outage::Ready> without_what_was_off(
    std::shared_ptr<const outage::Ready> ready, const std::vector<outage::Spans>& story,
    const std::vector<outage::Spans>& more);

}  // namespace estimate
