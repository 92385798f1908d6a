// A few curves over one day, each in a stroke of its own.
#pragma once

#include "answers/answer.hpp"
#include "faces/pictures/drawing.hpp"
#include "words/language.hpp"

namespace faces {

[[nodiscard]] Drawing drawing_of(const answers::DayCurves& curves,
                                 const words::Language& language = words::english());

}  // namespace faces
