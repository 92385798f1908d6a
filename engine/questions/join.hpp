// May this pack be plugged onto the others?
#pragma once

#include "handling/join.hpp"
#include "questions/asked.hpp"
#include "scenario/file/read.hpp"
#include "units/result.hpp"

namespace questions {

struct JoinFound {
    scenario::Scenario scenario;
    handling::Joining joining;
    scenario::Assumptions assumed = {};  // for the room
};

//   fails   as handling::join
[[nodiscard]] units::Result<JoinFound> find(const scenario::ReadScenario& read,
                                            const JoinAsked& asked, const How& how);

}  // namespace questions
