// From the text of a scenario file to what the Days page shows of its plan.
#pragma once

#include "models/days_view.hpp"
#include <QString>

namespace touch {

[[nodiscard]] DaysView plan_text(const QString& text);

// How many of many weathers the outage is lasted through, as a sentence; empty where weather is of
// no account or the file cannot be planned.
[[nodiscard]] QString chances_text(const QString& text);

}  // namespace touch
