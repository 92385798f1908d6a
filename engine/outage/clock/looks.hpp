// One outage looked at on its way, without its course being kept.
#pragma once

#include <span>
#include <vector>

#include "demand/demand.hpp"
#include "outage/course.hpp"
#include "outage/unit.hpp"
#include "units/quantities.hpp"

namespace outage {

// At one moment, with what runs from then on; the first three as TracePoint has them.
//   sun_taken   since the outage began
struct Look {
    units::StateOfCharge charge{};
    units::Voltage voltage{};
    units::Voltage rested{};
    units::Energy sun_taken{};
};

//   demand, sun, midnight   as run takes them
//   at                      in rising order; the run goes on to the last of them, failed or not
//   gives                   one for each; the run but for its end is that of `run` with these
//                           moments as changes of the sun
[[nodiscard]] std::vector<Look> look(const Unit& unit, std::span<const demand::DemandStep> demand,
                                     std::span<const SunChange> sun, units::Duration midnight,
                                     std::span<const units::Duration> at);

}  // namespace outage
