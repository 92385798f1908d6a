// The sign of the program: a candle that stands as high as the hours it burns, beside marks that
// end at the outage's length. Where the wax ends below the top mark, the light goes out early.
#pragma once

#include <string>
#include <vector>

#include "faces/page.hpp"

namespace faces {

inline constexpr int candle_width = 8;  // characters of each line

// One line for the flame's room and one for each of `rows`, from the top.
//   takes   burns and outage in hours, positive outage
[[nodiscard]] std::vector<std::string> candle(double burns, double outage, int rows,
                                              const Look& look);

}  // namespace faces
