// "After months in storage, is it ready?" in finished words and numbers.
#pragma once

#include "handling/storage.hpp"
#include "report/answer.hpp"
#include "scenario/scenario.hpp"

namespace report {

[[nodiscard]] Answer storage_answer(const scenario::Scenario& scenario,
                                    const handling::Stored& stored);

}  // namespace report
