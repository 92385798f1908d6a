// Bars of an answer drawn with characters: a range a row, and small curves of a day.
#pragma once

#include <string>
#include <vector>

#include "report/answer.hpp"
#include "report/page.hpp"

namespace report {

// The title with what the signs mean, then one line a bar: label, range, words.
[[nodiscard]] std::vector<std::string> drawn_bars(const BarChart& chart, const Look& look);

// The title, one line a curve, and the hours under them.
[[nodiscard]] std::vector<std::string> drawn_curves(const DayCurves& curves, const Look& look);

}  // namespace report
