// The bars and the course of one start, made of characters.
#pragma once

#include <string>
#include <vector>

#include "answers/answer.hpp"
#include "faces/page.hpp"

namespace faces {

// The name with its verdict, a bar a constraint, and speed, current and voltage against time.
//   takes  bars, how many constraints at most, the fullest first; 0 is all, in their own order
[[nodiscard]] std::vector<std::string> start_plot(const answers::StartChart& chart,
                                                  std::size_t bars, const Look& look);

}  // namespace faces
