// A prepared pack with another voltage at the far end of its path that ends a discharge.
#pragma once

#include "battery/prepared.hpp"

namespace battery {

//   cut_off   0 V: nothing there is cut off
void set_cut_off(Prepared& pack, units::Voltage cut_off);

}  // namespace battery
