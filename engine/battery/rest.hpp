// What an AGM pack shows that is no longer drawn: it comes back from the level while it is drawn
// towards its rested voltage. method.md (70)
#pragma once

#include "battery/cell/open_circuit.hpp"
#include "units/quantities.hpp"

namespace battery {

// A draw of no more than this rests a pack: it lasts a hundred hours. Ours; the level was met from
// C/37 on.
inline constexpr units::Duration rests_over = 100.0 * units::hour;

// So long after a draw nothing more comes back.
inline constexpr units::Duration come_back_after = 2.0 * units::hour;

// Whether anything comes back: the two tables are not the same.
[[nodiscard]] bool comes_back(const OpenCircuit& drawn, const OpenCircuit& rested);

// At the terminals, nothing flowing; never above the rested table, nor below the level.
//   drawn, rested   the level while it is drawn and the table of rest, over the fill of a well
//   available       of the well that the terminals feel
//   rested_for      since it was drawn; not negative
[[nodiscard]] units::Voltage voltage_after_rest(const OpenCircuit& drawn, const OpenCircuit& rested,
                                                units::StateOfCharge available,
                                                units::Duration rested_for);

// The fill at which it shows this; below 0 or above 1 where no fill does.
[[nodiscard]] units::StateOfCharge fill_after_rest(const OpenCircuit& drawn,
                                                   const OpenCircuit& rested,
                                                   units::Voltage voltage,
                                                   units::Duration rested_for);

}  // namespace battery
