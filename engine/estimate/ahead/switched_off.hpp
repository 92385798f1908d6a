// The plan with loads switched off for times. method.md (10)
#pragma once

#include <memory>
#include <vector>

#include "demand/hours.hpp"
#include "outage/ready.hpp"

namespace estimate {

// Itself where nothing was off.
//   story, more   times, by load of the scenario; either may be empty
[[nodiscard]] std::shared_ptr<const outage::Ready> without_what_was_off(
    std::shared_ptr<const outage::Ready> ready, const std::vector<demand::Spans>& story,
    const std::vector<demand::Spans>& more);

}  // namespace estimate
