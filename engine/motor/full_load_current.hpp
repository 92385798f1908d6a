// Full-load current of single-phase motors by horsepower, where nothing better is known.
#pragma once

#include <optional>

#include "motor/kind.hpp"
#include "units/quantities.hpp"
#include "units/range.hpp"

namespace motor {

// A cautious value for wiring; never times volts for the running power.
//   takes    rated output 1/6 to 10 hp, linear between the rows of the table; rated voltage
//            110-120 (the 115 V column), 200, 208 or 220-240 V (the 230 V column)
//   gives    absent outside these
//   source   [NEC] Table 430.248
[[nodiscard]] std::optional<units::Current> full_load_current(units::Power rated_output,
                                                              units::Voltage rated);

// Locked-rotor current over the table's full-load current.
//   high     6, the conversion of [NEC] Table 430.251(A)
//   likely   4.6, from the largest locked-rotor currents of [NEMA MG 1] 12.33, from memory
//   low      3, common practice, no source
[[nodiscard]] units::Range<Multiple> locked_to_full_load();

}  // namespace motor
