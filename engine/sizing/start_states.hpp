// How the packs stand over the members when motors are switched on.
#pragma once

#include <span>
#include <vector>

#include "chance/members.hpp"
#include "outage/clock/motor_starts.hpp"

namespace sizing {

// Of the members whose supply is on at one start.
//   members      of them; the rest is nothing where there are none
//   low, high    four in five have a rested voltage between them
//   middle, charge   half have no less
struct StartState {
    int members = 0;
    units::Voltage low{};
    units::Voltage middle{};
    units::Voltage high{};
    units::StateOfCharge charge;
};

// One a start, over the first 64 members, each to the end of the outage, with packs and panels as
// they are; fewer of them where the outage has very many steps.
//   starts    of the likely course
//   threads   0 takes as many as the machine has; the same for any number
[[nodiscard]] std::vector<StartState> start_states(const chance::Members& members,
                                                   std::span<const outage::MotorStart> starts,
                                                   unsigned threads = 0);

}  // namespace sizing
