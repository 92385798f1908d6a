// The sentences of the answer from now on, each one plain.
#pragma once

#include <vector>

#include "estimate/outlook.hpp"
#include "scenario/scenario.hpp"
#include "units/time.hpp"
#include "words/said.hpp"

namespace answers {

// Until when, what to switch off next, what to read next; then what departs from the plan.
[[nodiscard]] std::vector<words::Said> now_sentences(const scenario::Scenario& scenario,
                                                     units::LocalTime now,
                                                     const estimate::Outlook& outlook);

// "Thursday 21:30, main 12.9 V": an entry, short.
[[nodiscard]] words::Said entry_in_short(const scenario::LogEntry& entry);

// "what refrigerator draws is 20 % more than planned (1.10 to 1.32 times the plan)".
[[nodiscard]] words::Said departure_in_words(const estimate::Departure& departure);

// What would be read next: "a plug-in meter on chest freezer, for a day".
[[nodiscard]] words::Said next_read_in_words(const scenario::Scenario& scenario,
                                             const estimate::Narrowing& next);

}  // namespace answers
