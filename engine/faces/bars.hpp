// Bars of an answer drawn with characters: a range a row, and small curves of a day.
#pragma once

#include <string>
#include <vector>

#include "answers/answer.hpp"
#include "faces/page.hpp"

namespace faces {

// The title with what the signs mean, then one line a bar: label, range, words.
[[nodiscard]] std::vector<std::string> drawn_bars(const answers::BarChart& chart, const Look& look);

// The title, one line a curve, and the hours under them.
[[nodiscard]] std::vector<std::string> drawn_curves(const answers::DayCurves& curves,
                                                    const Look& look);

}  // namespace faces
