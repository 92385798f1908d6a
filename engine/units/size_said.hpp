// A wire's size as a part of what is said.
#pragma once

#include "units/size.hpp"
#include "words/said.hpp"

namespace units {

// "12 AWG" or "2.5 mm²", each with the other beside it for who reads units of the United States.
[[nodiscard]] words::Amount amount(const WireSize& size);

}  // namespace units
