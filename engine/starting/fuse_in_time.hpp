// How long a fuse holds more than its rating, for starts that are over in seconds.
#pragma once

#include "units/quantities.hpp"
#include "units/range.hpp"

namespace starting {

// The current that melts it in just this time. Low is the fastest fuse of its kind, high the
// slowest. Between the points the logarithms lie on a line; shorter than the last of them the
// square of the current times the time is constant; from the first on 1.1 times the rating is held.
//   takes    time above 0
//   source   [Blade sheets] opening times of maxi blades; at 200 % 60 s for its 50
[[nodiscard]] units::Range<units::Current> melting_current(units::Current rating,
                                                           units::Duration time);

// Heating current over its mean where nothing smooths the pulsating power of a single phase:
// sqrt(1 + 1/(2 pf^2)), from p(t) = S (pf + cos 2wt); method.md, "Constraints".
//   takes    factor above 0
[[nodiscard]] double largest_ripple(units::PowerFactor factor);

}  // namespace starting
