// Registers of two doubles; CMakeLists.txt says what this file is compiled for.
#include "battery/calm_lanes.hpp"

namespace battery {

template bool Calm::meets_as<Calm::AtOnce::two>(double);
template bool Calm::rests_as<Calm::AtOnce::two>(double&);
template double Calm::stored_as<Calm::AtOnce::two>() const;
template bool Calm::stands_as<Calm::AtOnce::two>(double, const CalmLimits&);
template Calm::Tried Calm::step_as<Calm::AtOnce::two>(double, double, double, const CalmLimits&);

}  // namespace battery
