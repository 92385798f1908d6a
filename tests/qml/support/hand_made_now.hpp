// What the Now page shows, made by hand: no engine is asked.
#pragma once

#include "models/now/now_view.hpp"

namespace touch_tests {

// Three sentences, one that departs, the days of the hand-made plan with a pin an entry.
[[nodiscard]] touch::NowView hand_made_now(const QString& text, const QString& file,
                                           const QString& at);

}  // namespace touch_tests
