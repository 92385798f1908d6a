// The members that every question of a scenario speaks from.
#pragma once

#include <cstdint>
#include <memory>
#include <optional>
#include <string>

#include "chance/members.hpp"
#include "scenario/scenario.hpp"

namespace sizing {

// Blocks of 64 members that are run where nobody asks for another number: as many as the goal
// needs, fewer where an outage is so long that a question would take more than some seconds; at
// least one. The same for every question.
[[nodiscard]] int usual_blocks(const scenario::Scenario& scenario, const outage::Ready& ready);

//   folder    of the scenario's file, as outage::make_ready takes it
//   ready     made of this scenario
//   wanted    at least so many, in whole blocks; nothing takes the usual number
[[nodiscard]] chance::Members members_of(const scenario::Scenario& scenario,
                                         const std::string& folder,
                                         std::shared_ptr<const outage::Ready> ready,
                                         std::uint64_t seed, std::optional<int> wanted = {});

}  // namespace sizing
