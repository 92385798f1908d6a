// The bars and the course of one start, and the same made of characters.
#pragma once

#include <string>
#include <vector>

#include "checks/start_plan.hpp"
#include "report/answer.hpp"
#include "report/page.hpp"

namespace report {

[[nodiscard]] StartChart start_chart(const checks::LoadStart& start);

// "78 to 113 %"; above 999 % no more is told.
[[nodiscard]] std::string in_percent(const units::Range<checks::Utilised>& used);

// The name with its verdict, a bar a constraint, and speed, current and voltage against time.
//   takes  bars, how many constraints at most, the fullest first; 0 is all, in their own order
[[nodiscard]] std::vector<std::string> start_plot(const StartChart& chart, std::size_t bars,
                                                  const Look& look);

}  // namespace report
