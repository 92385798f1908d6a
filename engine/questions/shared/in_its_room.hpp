// A scenario for questions of one moment, which know one temperature alone: that of packs that
// follow their room is fixed and told. outage/room.hpp
#pragma once

#include "scenario/assumption.hpp"
#include "scenario/file/read.hpp"

namespace questions {

struct InItsRoom {
    scenario::Scenario scenario;
    scenario::Assumptions taken;  // for the room
};

[[nodiscard]] InItsRoom at_the_coldest(const scenario::ReadScenario& read);
[[nodiscard]] InItsRoom at_the_mean_from(units::LocalTime from, const scenario::ReadScenario& read);

}  // namespace questions
