// The chart of the outage days made of characters: what is stored, the nights, what happens when.
#pragma once

#include <string>
#include <vector>

#include "answers/answer.hpp"
#include "faces/page.hpp"

namespace faces {

// rows lines of plot, then the axis of days and the letters of the markers.
[[nodiscard]] std::vector<std::string> days_plot(const answers::DaysChart& chart, int width,
                                                 int rows, const Look& look);

// What the signs of the plot mean, on one line.
[[nodiscard]] std::string plot_key(const answers::DaysChart& chart, const Look& look);

}  // namespace faces
