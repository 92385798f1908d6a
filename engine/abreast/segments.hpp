// The stretches of an outage during which neither what is asked for nor the sun changes: the same
// for every number of packs and panels and every weather, so worked out once.
#pragma once

#include <span>
#include <vector>

#include "battery/decay.hpp"
#include "demand/demand.hpp"
#include "outage/unit.hpp"
#include "units/quantities.hpp"

namespace abreast {

// Plain SI numbers for the inner loop.
struct Segment {
    double time = 0.0;     // s
    double taken = 0.0;    // W at the bus
    double charger = 0.0;  // W offered there besides the sun
    int sun_step = 0;      // which of the sun's steps
    int day = 0;           // which of the unit's days
    bool through_inverter = false;
    double cut_off = 0.0;          // V at the bus that ends a discharge; 0: none
    battery::Decay decayed;        // of the head difference over the time
    double fill_per_ampere = 0.0;  // mean fill of the available well lost an ampere
    double begins = 0.0;           // s after the outage starts
    double ends = 0.0;
};

//   horizon   to the end of the outage, or until the inverter is asked for more than it carries
//   lasts     whether the horizon is the end of the outage
struct Segments {
    std::vector<Segment> all;
    units::Duration horizon{};
    bool lasts = true;
};

//   demand     in order of time, the first at 0
//   sun_from   when each step of the sun begins; none without panels
//   pack       for its wells; any number of packs and any day gives the same
[[nodiscard]] Segments segments(const outage::Unit& unit,
                                std::span<const demand::DemandStep> demand,
                                std::span<const units::Duration> sun_from, units::Duration lasts,
                                const battery::Prepared& pack);

}  // namespace abreast
