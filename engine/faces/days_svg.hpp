// The plot of the outage days as a drawing, for the page and by itself: what is stored as a band
// and its likely course, nights shaded, loads and sun under it, findings at their hour.
#pragma once

#include <string>

#include "answers/answer.hpp"

namespace faces {

// A drawing of its own, dark where the reader's surroundings are. The title is read aloud.
[[nodiscard]] std::string in_svg(const answers::DaysChart& chart, const std::string& title);

}  // namespace faces
