// A few curves over one day, each in a stroke of its own.
#pragma once

#include "answers/answer.hpp"
#include "faces/drawing.hpp"

namespace faces {

[[nodiscard]] Drawing drawing_of(const answers::DayCurves& curves);

}  // namespace faces
