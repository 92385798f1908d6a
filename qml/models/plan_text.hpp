// From the text of a scenario file to what the Days page shows of its plan. Files that the scenario
// names, such as hours of weather, lie beside `file`.
#pragma once

#include "models/days_view.hpp"
#include <QString>

namespace touch {

[[nodiscard]] DaysView plan_text(const QString& text, const QString& file = {});

// How many of many weathers the outage is lasted through, as a sentence; empty where weather is of
// no account or the file cannot be planned.
[[nodiscard]] QString chances_text(const QString& text, const QString& file = {});

}  // namespace touch
