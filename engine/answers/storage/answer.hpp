// "After months in storage, is it ready?" in words and numbers.
#pragma once

#include "answers/answer.hpp"
#include "handling/storage.hpp"
#include "scenario/scenario.hpp"

namespace answers {

[[nodiscard]] Answer storage_answer(const scenario::Scenario& scenario,
                                    const handling::Stored& stored);

}  // namespace answers
