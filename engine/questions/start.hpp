// Will it start?
#pragma once

#include "questions/asked.hpp"
#include "questions/shared/in_its_room.hpp"
#include "questions/shared/starts.hpp"
#include "scenario/file/read.hpp"
#include "units/result.hpp"

namespace questions {

struct StartFound {
    PlannedStarts starts;
    scenario::Assumptions assumed;  // for the room
};

//   fails   as planned_starts
[[nodiscard]] units::Result<StartFound> find(const scenario::ReadScenario& read,
                                             const StartAsked& asked, const How& how);

}  // namespace questions
