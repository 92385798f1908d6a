// A constant power at the far end of a resistance, as an inverter behind its main path: what flows,
// and what must stand before it. method.md (16), (20)
#pragma once

#include "units/quantities.hpp"

namespace wiring {

// From a voltage through a resistance, at the higher of the two voltages at which the power is
// there; where there is none, that of the largest power.
//   takes   all at least 0
//   gives   0 where there is no voltage
[[nodiscard]] units::Current current_into(units::Power drawn, units::Resistance through,
                                          units::Voltage from);

// The least voltage before the resistance with which the power comes at no less than `least`.
//   gives   `least` where nothing resists or nothing is drawn
[[nodiscard]] units::Voltage needed_before(units::Resistance through, units::Power drawn,
                                           units::Voltage least);

}  // namespace wiring
