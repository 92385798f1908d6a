// Each load's part in an outage: what it wants, and from when to when it goes without.
#pragma once

#include <string>
#include <vector>

#include "demand/demand.hpp"
#include "outage/course.hpp"
#include "scenario/load.hpp"
#include "units/quantities.hpp"

namespace outage {

// A stretch in which a load asks and gets nothing: from the first moment of it at which it is on to
// the last.
struct Gap {
    units::Duration from{};
    units::Duration to{};
    LimitedBy why{};
};

// One load's part in the likely course.
struct LoadUse {
    std::string name;
    scenario::Outlet from{};
    int priority = 3;
    int count = 1;
    units::Power running_low{};
    units::Power running{};  // of all `count` while on
    units::Power running_high{};
    units::Energy wanted{};     // over the whole outage, likely
    units::Energy per_day{};    // mean day of the outage, likely
    units::Duration on_time{};  // over the whole outage
    words::Said from_what;      // "metered 1.9 kWh over 31 h"
    // Wanted in each hour after the start, the last of which may be shorter; they sum to `wanted`.
    std::vector<units::Energy> hours = {};
    units::Duration fed{};  // of on_time
    std::vector<Gap> goes_without;
};

// Each load's part, from its hours and not from the steps; in the file's order.
[[nodiscard]] std::vector<LoadUse> load_uses(const demand::Demand& demand);

}  // namespace outage
