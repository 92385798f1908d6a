// What the log says of the outage so far, up to a moment: who was off when, which packs were there,
// and what was read. method.md (10)
#pragma once

#include <cstddef>
#include <optional>
#include <vector>

#include "demand/hours.hpp"
#include "scenario/scenario.hpp"
#include "units/quantities.hpp"
#include "units/time.hpp"

namespace estimate {

// Packs of one entry of the scenario that join or go.
//   joined   so many more than before; negative where they go
//   charge   of those that join, as their display shows it; else as when they left, or as the file
//            has them
struct PackChange {
    units::Duration at{};
    std::size_t pack = 0;
    int joined = 0;
    std::optional<units::StateOfCharge> charge = {};
};

//   off            of each load of the scenario, when it was switched off
//   at_start       of each pack of the scenario, how many were joined
//   pack_changes   in order of time
//   readings       places in the log of what was read of the packs and of the sun, in order of time
//   meters         likewise of the plug-in meters
//   taken_as_off   loads of which the first word is that they were switched on, so that they count
//                  as off until then
struct Story {
    std::vector<demand::Spans> off;
    std::vector<std::size_t> taken_as_off;
    std::vector<int> at_start;
    std::vector<PackChange> pack_changes;
    std::vector<std::size_t> readings;
    std::vector<std::size_t> meters;
    std::optional<units::LocalTime> supply_back;
    std::optional<units::LocalTime> expected_back;  // as it was told last

    [[nodiscard]] bool tells_nothing() const;  // that changes the plan
    [[nodiscard]] bool is_off(std::size_t load, units::Duration at) const;
};

//   until   entries after it are not known yet
[[nodiscard]] Story story_of(const scenario::Scenario& scenario, units::LocalTime until);

}  // namespace estimate
