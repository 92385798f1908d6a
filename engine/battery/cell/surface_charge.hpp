// What a LiFePO4 pack shows above its rested voltage after it was charged full: it dies away with
// time, and with the first charge drawn. method.md (65) to (67)
#pragma once

#include "units/quantities.hpp"

namespace battery {

// Four cells, some minutes or longer after the charger was taken off a full pack: 13.3 V in the
// end, 13.5 V after some four days. Within 60 mV of one bank from an hour to 41 days.
//   rested_for   not negative
[[nodiscard]] units::Voltage full_lithium_after(units::Duration rested_for);

// What is left of a surface voltage after so much was drawn; a thousandth of the rated charge takes
// more than a quarter of it.
//   drawn   not negative
[[nodiscard]] units::Voltage surface_left(units::Voltage surface, units::Charge drawn,
                                          units::Charge rated);

// Two packs joined, of which the one that gives stands `surface` above its rested voltage: it
// drains through the path. (67)
//   rested    by how much its rested voltage is the higher one, above zero
//   path      of both packs in series, above zero
//   gives     the current out of it this long after they were joined
[[nodiscard]] units::Current joining_current(units::Voltage rested, units::Voltage surface,
                                             units::Resistance path, units::Charge rated,
                                             units::Duration after);

}  // namespace battery
