// What a quasi-square wave does to a motor: only its fundamental makes torque.
#pragma once

#include "motor/kind.hpp"
#include "units/quantities.hpp"

namespace motor {

// Share of each half cycle in which the output is on.
using PulseWidth = units::Fraction<struct PulseWidthMeaning>;

// Fundamental over the whole, both root mean square; method.md (14).
//   takes   width above 0, at most 1
[[nodiscard]] units::Share fundamental_of_quasi_square(PulseWidth width);

// Harmonics over the fundamental, both root mean square; may exceed 1.
[[nodiscard]] Multiple distortion_of_quasi_square(PulseWidth width);

// Torque over that of a sine wave of the same root mean square: the square of the fundamental.
[[nodiscard]] units::Share torque_on_quasi_square(PulseWidth width);

}  // namespace motor
