// The same unit with fewer and more panels.
#pragma once

#include <memory>
#include <vector>

#include "outage/ready.hpp"

namespace outage {

// Which counts are looked at: each up to 16, then an eighth more at a time, always the file's own
// and `most`.
[[nodiscard]] std::vector<int> panels_looked_at(const Ready& ready, int most);

// What lights so many panels: up to the file's own count panels are left out from the last entry
// on; more are like the first entry. Nothing where there are none.
[[nodiscard]] std::shared_ptr<const SkyModels> sky_with_panels(const Ready& ready, int panels);

// The same unit with another number of panels, and what they offer at the three ends.
[[nodiscard]] Ready with_panels(const Ready& ready, int panels);

}  // namespace outage
