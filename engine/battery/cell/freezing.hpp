// When the acid of a lead-acid pack freezes: the emptier the pack, the weaker the acid. method.md
// (50), (51)
#pragma once

#include <optional>

#include "scenario/pack.hpp"
#include "units/quantities.hpp"

namespace battery {

// A pack nearer to freezing than this is in danger: tables differ by 2 K, and while it is drawn the
// acid in the plates is weaker than that beside them. Ours.
inline constexpr units::TemperatureDifference near_freezing = 5.0 * units::kelvin;

// Freezing point of the acid of a rested pack with this much left; nothing for LiFePO4, which has
// no water to freeze. Not below -67.8 degC, where the table ends.
[[nodiscard]] std::optional<units::Temperature> freezing_point(scenario::Chemistry chemistry,
                                                               units::StateOfCharge charge);

// The charge below which a pack freezes at this temperature, 0 to 1; nothing where it does not
// freeze while anything is left.
[[nodiscard]] std::optional<units::StateOfCharge> freezes_below(scenario::Chemistry chemistry,
                                                                units::Temperature temperature);

}  // namespace battery
