// How long does it last?
#pragma once

#include <optional>

#include "outage/plan.hpp"
#include "questions/asked.hpp"
#include "questions/shared/outage_chance.hpp"
#include "questions/shared/outage_starts.hpp"
#include "scenario/assumption.hpp"
#include "scenario/file/read.hpp"
#include "units/result.hpp"

namespace questions {

//   scenario  as it was run: after storage with the charge that is left
//   chance    absent where no members were asked for
//   starts    which motors do not surely start every time
//   assumed   of the storage
struct OutageFound {
    scenario::Scenario scenario;
    outage::Plan plan;
    std::optional<OutageChance> chance = {};
    OutageStarts starts = {};
    scenario::Assumptions assumed = {};
};

//   fails   as outage::make_ready and handling::storage
[[nodiscard]] units::Result<OutageFound> find(const scenario::ReadScenario& read,
                                              const OutageAsked& asked, const How& how);

}  // namespace questions
