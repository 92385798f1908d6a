// How far a piece of work off the screen's thread has come, and whether it is still wanted.
#pragma once

#include <atomic>

namespace touch {

struct Watch {
    std::atomic<double> done{0.0};  // share, 0 to 1; not every question tells it
    std::atomic<bool> stop{false};  // not wanted any more
};

}  // namespace touch
