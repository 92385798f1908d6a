// What a sealed lead-acid pack gasses near full, where it recombines to heat: charging stores less
// of a charge the less else flows. method.md (71), (72)
#pragma once

#include "battery/cell/charge_efficiency.hpp"
#include "units/quantities.hpp"

namespace battery {

// Flows while a cell stands at this voltage, and is not stored; of a new pack.
//   of_cell   at the terminals over the cells in series
//   source    [Schiffer 2007], constants as read in two open models
[[nodiscard]] units::Current gassing_current(units::Charge rated, units::Voltage of_cell,
                                             units::Temperature temperature);

// With so much left, while absorption holds the voltage; at least 20 %. method.md (72)
//   far_from_full   what is stored where nothing gasses
//   gassing         at the absorption voltage, not negative
[[nodiscard]] units::Efficiency sealed_efficiency(const Kinetics& kinetics, units::Charge rated,
                                                  units::Efficiency far_from_full,
                                                  units::Current gassing,
                                                  units::StateOfCharge charge);

// The same in pieces of the fill. (44)
[[nodiscard]] ChargeEfficiency sealed_efficiency(const Kinetics& kinetics, units::Charge rated,
                                                 units::Efficiency far_from_full,
                                                 units::Current gassing);

}  // namespace battery
