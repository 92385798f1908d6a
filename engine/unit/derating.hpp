// What warmth takes of a fuse's rating where the builder does not say. method.md (3)
#pragma once

#include "units/quantities.hpp"

namespace unit {

// Share of the rating lost for each kelvin above 25 degC, of fuses and breakers of every family.
//   source   [Fuse derating guide], 0.2 to 0.5 %
constexpr units::Share least_derating_per_kelvin = units::Share(0.002);
constexpr units::Share most_derating_per_kelvin = units::Share(0.005);

}  // namespace unit
