// Builds to choose among: how sure each is, against what it weighs or costs.
#pragma once

#include "answers/answer.hpp"
#include "faces/drawing.hpp"

namespace faces {

//   view   of the chart
[[nodiscard]] Drawing drawing_of(const answers::BuildsChart& chart,
                                 const answers::BuildsView& view);

}  // namespace faces
