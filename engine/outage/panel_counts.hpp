// The same unit with fewer and more panels.
#pragma once

#include <vector>

#include "outage/ready.hpp"

namespace outage {

// Which counts are looked at: each up to 16, then an eighth more at a time, always the file's own
// and `most`.
[[nodiscard]] std::vector<int> panels_looked_at(const Ready& ready, int most);

// The same unit with another number of panels: up to the file's own count panels are left out from
// the last entry on; more are like the first entry.
[[nodiscard]] Ready with_panels(const Ready& ready, int panels);

}  // namespace outage
