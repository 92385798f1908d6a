// The plot of the outage days: what is stored as a band and its likely course, nights shaded, loads
// and sun under it, findings at their hour.
#pragma once

#include "answers/answer.hpp"
#include "faces/pictures/drawing.hpp"
#include "words/language.hpp"

namespace faces {

[[nodiscard]] Drawing drawing_of(const answers::DaysChart& chart,
                                 const words::Language& language = words::english());

}  // namespace faces
