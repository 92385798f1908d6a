// The sentences of the answer from now on, each one plain.
#pragma once

#include <string>
#include <vector>

#include "estimate/outlook.hpp"
#include "scenario/scenario.hpp"
#include "units/time.hpp"

namespace answers {

// Until when, what to switch off next, what to read next; then what departs from the plan.
[[nodiscard]] std::vector<std::string> now_sentences(const scenario::Scenario& scenario,
                                                     units::LocalTime now,
                                                     const estimate::Outlook& outlook);

// "Thursday 21:30, main 12.9 V": an entry, short.
[[nodiscard]] std::string entry_in_short(const scenario::LogEntry& entry);

// "refrigerator draws 20 % more than planned (10 to 32 % more)".
[[nodiscard]] std::string departure_in_words(const estimate::Departure& departure);

// What would be read next: "the meter on chest freezer".
[[nodiscard]] std::string next_read_in_words(const scenario::Scenario& scenario,
                                             const estimate::Narrowing& next);

}  // namespace answers
