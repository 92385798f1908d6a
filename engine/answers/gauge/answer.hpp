// "What does this voltage reading mean?" in words and numbers.
#pragma once

#include <optional>

#include "answers/answer.hpp"
#include "handling/gauge.hpp"
#include "questions/gauge.hpp"
#include "scenario/scenario.hpp"
#include "units/time.hpp"

namespace answers {

[[nodiscard]] Answer gauge_answer(const scenario::Scenario& scenario,
                                  const handling::Reading& reading,
                                  const handling::ChargeRead& read,
                                  const std::optional<questions::FromNow>& from_now);

}  // namespace answers
