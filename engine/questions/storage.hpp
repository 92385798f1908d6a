// What becomes of the packs in storage?
#pragma once

#include "handling/storage.hpp"
#include "questions/asked.hpp"
#include "scenario/file/read.hpp"
#include "units/result.hpp"

namespace questions {

struct StorageFound {
    scenario::Scenario scenario;
    handling::Stored stored;
};

//   fails   as handling::storage
[[nodiscard]] units::Result<StorageFound> find(const scenario::ReadScenario& read,
                                               const StorageAsked& asked, const How& how);

}  // namespace questions
