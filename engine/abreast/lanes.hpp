// Many outages side by side: up to 64 unlike only in their number of packs and their sun go from
// segment to segment together, until each has failed or the outage is over. method.md (2)
#pragma once

#include <array>
#include <optional>
#include <span>
#include <vector>

#include "abreast/segments.hpp"
#include "abreast/stride.hpp"
#include "battery/cell/two_well.hpp"
#include "battery/prepared.hpp"
#include "outage/course.hpp"
#include "units/quantities.hpp"

namespace abreast {

// One number of packs, ready to serve: through the inverter, and to 12 V loads alone; with the
// highest voltage that cuts off in any segment, so that what is far from it is far from each.
//   timed          a current above what they bear for ever is stood for a time: the clock's
//   business charge_borne   likewise what is offered beyond it, which a fuse may not bear
struct ReadyPacks {
    int count = 1;
    bool timed = false;
    units::Power charge_borne{};
    battery::Prepared with_inverter;
    battery::Prepared direct;
};

// What every lane has in common.
//   days       of the unit, one where its packs keep one temperature; in each the packs by count,
//              from one
//   at_start   of one pack; already_empty when that is at or beyond its usable limit
struct LaneWorld {
    Segments segments;
    std::vector<std::vector<ReadyPacks>> days;
    battery::Wells at_start;
    bool already_empty = false;
    bool a_fuse_may_open = false;  // but those of packs: the clock's business
};

// One outage to run.
//   sun   W at the bus of each step of the sun; empty without panels
struct LaneJob {
    int packs = 1;
    std::span<const double> sun;
};

//   undecided   the packs came to a current that they stand for a time
struct LaneEnding {
    units::Duration lasts{};
    bool survives = false;
    bool undecided = false;
};

// How one outage ends, as the clock has it.
struct OwnEnding {
    units::Duration lasts{};
    bool survives = false;
    outage::LimitedBy limited_by = outage::LimitedBy::none;

    friend bool operator==(const OwnEnding&, const OwnEnding&) = default;
};

//   by_clock   outages that the clock ran from the beginning
struct LaneCost {
    std::size_t steps = 0;       // of lanes that had not failed
    std::size_t one_by_one = 0;  // of these, taken outside the common stride
    std::size_t by_clock = 0;
};

//   jobs      at most `lanes`
//   width     one of widths_here(); the widest where it is not given
//   endings   one a job; equal to the single run of the outage to the last bit where it is decided
void run_lanes(const LaneWorld& world, std::span<const LaneJob> jobs, std::span<LaneEnding> endings,
               LaneCost* cost = nullptr, std::optional<Width> width = {});

}  // namespace abreast
