// Many outages side by side, each with a unit, loads and a sun of its own, up to the first failure
// of each. What the lanes cannot do is run by the clock. method.md (3)
#pragma once

#include <optional>
#include <span>
#include <vector>

#include "abreast/lanes.hpp"
#include "demand/demand.hpp"
#include "outage/course.hpp"
#include "outage/parts.hpp"
#include "outage/unit.hpp"
#include "units/quantities.hpp"

namespace abreast {

// What one step of the demand asks of the packs: plain SI numbers for the inner loop.
//   lowest    at the bus, that its 12 V loads bear
//   needs     at the bus, so that the inverter stays on
//   carried   by the inverter
struct Need {
    double taken = 0.0;        // W at the bus, of it
    double at_inverter = 0.0;  // at the inverter's terminals
    double direct = 0.0;       // beside it
    double charger = 0.0;      // W offered there by other than the sun
    double lowest = 0.0;       // V
    double needs = 0.0;        // V
    bool through_inverter = false;
    bool carried = true;
};

// One a step of the demand. Of the unit its inverter and main path count, and what a pack of its
// first bank rests at half full: not how many there are.
[[nodiscard]] std::vector<Need> needs_of(const outage::Unit& unit,
                                         std::span<const demand::DemandStep> demand);

// The most of each in any step.
struct MostNeeded {
    double at_inverter = 0.0;
    double lowest = 0.0;
    double needs = 0.0;
};
[[nodiscard]] MostNeeded most_of(std::span<const Need> needs);

// Whether loads and inverter switch at the same instants.
[[nodiscard]] bool switch_together(std::span<const demand::DemandStep> one,
                                   std::span<const demand::DemandStep> other);

// One outage to run; everything must outlive the run.
//   demand   in order of time, the first at 0
//   needs    of the unit and this demand, where they are known already; else worked out
//   most     of the needs, where it is known already
//   pattern  the same for those that are known to switch together; nullptr: it is looked at
//   sun      in order of time, the first at 0; empty without panels
//   guarded  loads behind a fuse that may open, which is the clock's business; nullptr: none
struct Outage {
    const outage::Unit* unit = nullptr;
    std::span<const demand::DemandStep> demand;
    std::span<const Need> needs = {};
    std::optional<MostNeeded> most = {};
    const void* pattern = nullptr;
    std::span<const outage::SunChange> sun = {};
    const outage::Parts* guarded = nullptr;
};

//   lasts      of the outage, alike for all, as midnight is: from the start to the first midnight
//   outages    any number; quickest where many in a row switch at the same instants
//   endings    one an outage; equal to those of outage::run to the last bit
void run_own(std::span<const Outage> outages, units::Duration lasts, units::Duration midnight,
             std::span<OwnEnding> endings, LaneCost* cost = nullptr,
             std::optional<Width> width = {});

}  // namespace abreast
