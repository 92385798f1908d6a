// What stands behind a report: the drawing of the build, how each answer was worked out, and all
// that was assumed, once for all answers.
#pragma once

#include <vector>

#include "print/plots.hpp"
#include "print/report/report.hpp"

namespace printing {

// The build on as many pages, lying across, as it takes for letters that can be read; nothing where
// no answer has one.
void add_build(Report& report, const std::vector<const answers::Answer*>& answers);

// Whether it is left to those who look for it: how a motor comes up, and builds against a second
// figure.
[[nodiscard]] bool stands_behind(const Plot& plot, const answers::Answer& answer);

// Long tables, and plots that stand behind the answers.
void add_further(Report& report, const std::vector<const answers::Answer*>& answers);

// A table for each answer; a step that an earlier one told is not told again.
void add_working(Report& report, const std::vector<const answers::Answer*>& answers);

// One table; what several answers assume stands in it once.
void add_assumptions(Report& report, const std::vector<const answers::Answer*>& answers);

}  // namespace printing
