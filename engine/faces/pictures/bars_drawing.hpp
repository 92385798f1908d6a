// Bars with their range: what is sure is filled, what is likely a stroke, what is
// possible pale; and the bars of one motor's start against their limits, with its course.
#pragma once

#include "answers/answer.hpp"
#include "faces/pictures/drawing.hpp"
#include "words/language.hpp"

namespace faces {

[[nodiscard]] Drawing drawing_of(const answers::BarChart& chart,
                                 const words::Language& language = words::english());
[[nodiscard]] Drawing drawing_of(const answers::StartChart& chart,
                                 const words::Language& language = words::english());

}  // namespace faces
