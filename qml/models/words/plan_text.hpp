// From the text of a scenario file to what the Days page shows of its plan. Files that the scenario
// names, such as hours of weather, lie beside `file`.
#pragma once

#include <QString>

#include "models/days/days_view.hpp"

namespace touch {

// The first answer: of a few members of the chance.
[[nodiscard]] DaysView plan_text(const QString& text, const QString& file = {});

// The same of as many members as the command line runs, with how well the chance is known and what
// more packs would do.
[[nodiscard]] DaysView weighed_text(const QString& text, const QString& file = {});

}  // namespace touch
