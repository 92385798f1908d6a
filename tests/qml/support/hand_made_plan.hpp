// A plan written by hand, so that what the screens show does not hang on what the engine finds.
#pragma once

#include <QString>

#include "answers/answer.hpp"
#include "models/days/days_view.hpp"

namespace touch_tests {

// Two days from Wednesday 18:00: 4 kWh falling evenly to nothing after `lasts` hours, a bit of sun
// from hour 14 to 18 that puts charge back, one stop pinned to the end and one note without an
// hour.
[[nodiscard]] answers::Answer hand_made_answer(double lasts = 30.0);

// What is shown of a text: the hand-made answer, lasting ten hours for each expansion pack in it.
[[nodiscard]] touch::DaysView hand_made_view(const QString& text, const QString& file = {});

}  // namespace touch_tests
