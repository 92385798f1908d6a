// Registers of four doubles; CMakeLists.txt says what this file is compiled for.
#include "battery/calm_lanes.hpp"

namespace battery {

template bool Calm::meets_as<Calm::AtOnce::four>(double);
template bool Calm::rests_as<Calm::AtOnce::four>(double&);
template double Calm::stored_as<Calm::AtOnce::four>() const;
template bool Calm::stands_as<Calm::AtOnce::four>(double, const CalmLimits&);
template Calm::Tried Calm::step_as<Calm::AtOnce::four>(double, double, double, const CalmLimits&);

}  // namespace battery
