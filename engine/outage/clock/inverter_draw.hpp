// What the inverter draws while a step of the demand holds, and what the main path takes of it: the
// one place that knows. method.md (18)
#pragma once

#include "demand/demand.hpp"
#include "outage/unit.hpp"
#include "units/quantities.hpp"

namespace outage {

//   at_terminals   idle and conversion included, or what it draws asleep
//   in_main        lost between the bus and its terminals: with packs half full and in use, so
//                  that a step has one figure
//   needs          at the bus; with less it stands below its cut-off
//   carried        within both of its ratings
struct InverterDraw {
    units::Power at_terminals{};
    units::Power in_main{};
    units::Voltage needs{};
    bool carried = true;
    [[nodiscard]] units::Power at_bus() const { return at_terminals + in_main; }
};

//   gives   nothing at all, and carried, without an inverter or while it is switched off
[[nodiscard]] InverterDraw drawn_by_inverter(const Unit& unit, const demand::DemandStep& step);

// What flows in the main path at this voltage of the bus.
[[nodiscard]] units::Current current_in_main(const Unit& unit, units::Power at_terminals,
                                             units::Voltage bus);

}  // namespace outage
