// Runs one outage in closed form from each change to the next. method.md, "The clock".
#pragma once

#include <span>
#include <vector>

#include "demand/demand.hpp"
#include "outage/course.hpp"
#include "outage/parts.hpp"
#include "outage/unit.hpp"

namespace outage {

// What the sun gave on one local day of the run.
struct SunOfDay {
    units::Energy offered{};
    units::Energy taken{};
    units::Energy unused{};
    units::Energy clipped{};
};

// How much of a run is kept.
struct Keep {
    bool trace = true;            // trace and events
    units::Duration every{};      // least time between points of the trace; 0 keeps each
    units::Duration intervals{};  // length of the account's intervals; 0 keeps none
    bool after_failure = true;    // go on when the supply has failed; the ledger is only whole then
};

//   demand     in order of time, the first at 0; never empty
//   sun        likewise, or empty for no panels; with a change at each midnight, for `days`
//   midnight   from the start of the outage to the first local midnight, 0 to 24 h
//   days       one entry a local day touched is added to it, when it is given
//   parts      the 12 V loads of the demand, each to go out by itself; without them they are one
//              load, which bears DemandStep::lowest
//   gives      a course whose ledger closes (method.md (3)); Course::ledger.relative_residual says
//              how well
[[nodiscard]] Course run(const Unit& unit, std::span<const demand::DemandStep> demand,
                         std::span<const SunChange> sun, units::Duration lasts,
                         units::Duration midnight, Keep keep = {},
                         std::vector<SunOfDay>* days = nullptr, const Parts* parts = nullptr);

}  // namespace outage
