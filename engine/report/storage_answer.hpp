// "After months in storage, is it ready?" in finished words and numbers.
#pragma once

#include "checks/storage.hpp"
#include "report/answer.hpp"
#include "scenario/scenario.hpp"

namespace report {

[[nodiscard]] Answer storage_answer(const scenario::Scenario& scenario,
                                    const checks::Stored& stored);

}  // namespace report
