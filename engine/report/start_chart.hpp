// The bars and the course of one start.
#pragma once

#include <string>

#include "checks/start_plan.hpp"
#include "report/answer.hpp"

namespace report {

[[nodiscard]] StartChart start_chart(const checks::LoadStart& start);

// "78 to 113 %"; above 999 % no more is told.
[[nodiscard]] std::string in_percent(const units::Range<checks::Utilised>& used);

}  // namespace report
