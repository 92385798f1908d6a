// Builds to choose among: how sure each is, against what it weighs or costs.
#pragma once

#include <string_view>

#include "answers/answer.hpp"
#include "faces/pictures/drawing.hpp"
#include "words/language.hpp"

namespace faces {

//   view   of the chart
[[nodiscard]] Drawing drawing_of(const answers::BuildsChart& chart, const answers::BuildsView& view,
                                 const words::Language& language = words::english());

// "12 kg", "3600"; a price has no unit of its own.
//   unit   UCUM: "kg" or "1"
[[nodiscard]] words::Said weight_or_price(double figure, std::string_view unit);

// "3 packs, 2 panels"
[[nodiscard]] words::Said packs_and_panels(const answers::BuildPoint& point);

}  // namespace faces
