// The tables of an answer within a report.
#pragma once

#include "answers/answer.hpp"
#include "print/report/report.hpp"

namespace printing {

// Whether paper has it at all.
[[nodiscard]] bool is_told(const answers::Series& series);

// Whether it is so long that it stands behind the answers.
[[nodiscard]] bool stands_behind(const answers::Series& series);

// What is longer than a page or two is cut, and says so.
void add_series(Report& report, const answers::Series& series);

}  // namespace printing
