// Which of the sentences of an answer from now on stand first, where only a few are read.
#pragma once

#include <cstddef>

#include "estimate/outlook.hpp"
#include "scenario/scenario.hpp"
#include "units/time.hpp"

namespace answers {

// Of now_sentences: until when, what to switch off, what to read next; before them, where somebody's
// health depends on it, the hour by which to act. One alone once the supply is back.
[[nodiscard]] std::size_t leading_sentences(const scenario::Scenario& scenario,
                                            units::LocalTime now, const estimate::Outlook& outlook);

}  // namespace answers
