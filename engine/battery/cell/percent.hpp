// The one percent: what is left of the rated charge at the rated draw, 25 degC, at the pack's
// present age. What people give and read is this, in every question; the fill of the two wells
// (two_well.hpp) is what the step reckons with. method.md (46) to (49)
//   rated   charge that an even discharge over the rated time takes from a full pack, above 0
#pragma once

#include <algorithm>

#include "battery/cell/two_well.hpp"
#include "units/quantities.hpp"

namespace battery {

// 1 - removed/rated: 1 full; 0 where a discharge at the rated current ends; below 0 what only a
// slower draw still gets; above 1 by rounding alone.
[[nodiscard]] inline units::StateOfCharge charge_left(units::Charge rated, const Wells& wells) {
    return units::StateOfCharge(1.0 - wells.removed / rated);
}

// As people are shown it: 0 to 1. Below 0 nothing is left at the rated draw.
[[nodiscard]] inline units::StateOfCharge shown(units::StateOfCharge charge) {
    return units::StateOfCharge(std::clamp(charge.value(), 0.0, 1.0));
}

// A pack with this much left, at rest long enough for both wells to stand level.
[[nodiscard]] inline Wells rested_with(units::Charge rated, units::StateOfCharge charge) {
    return {.removed = charge.complement().value() * rated, .head_difference = {}};
}

// Fill of a well (available, bound, or both at rest) that belongs to a charge, and back.
[[nodiscard]] inline units::StateOfCharge fill_with(const Kinetics& kinetics, units::Charge rated,
                                                    units::StateOfCharge charge) {
    return units::StateOfCharge(1.0 - charge.complement().value() * (rated / kinetics.total));
}
[[nodiscard]] inline units::StateOfCharge charge_at_fill(const Kinetics& kinetics,
                                                         units::Charge rated,
                                                         units::StateOfCharge fill) {
    return units::StateOfCharge(1.0 - fill.complement().value() * (kinetics.total / rated));
}

// The charge at which both wells are empty, which only a very slow draw reaches: not above 0
// where the wells hold at least the rated charge.
[[nodiscard]] inline units::StateOfCharge lowest_charge(const Kinetics& kinetics,
                                                        units::Charge rated) {
    return charge_at_fill(kinetics, rated, units::StateOfCharge(0.0));
}

}  // namespace battery
