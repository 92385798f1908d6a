// What is taken where nobody says it.
#pragma once

#include "units/quantities.hpp"

namespace unit {

// Of the packs; common practice, no source.
inline constexpr units::Temperature usual_pack_temperature = units::celsius(20.0);

}  // namespace unit
