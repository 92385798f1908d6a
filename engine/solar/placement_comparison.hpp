// What a way of placing panels is worth.
#pragma once

#include <string>
#include <vector>

#include "solar/typical_sky.hpp"

namespace solar {

struct PlacementYield {
    std::string placement;            // "flat", "fixed", "turned 2 times a day", …
    std::vector<scenario::Aim> aims;  // how the panels stand, by time of day
    DayRange day;                     // what it offers on a dull, likely, bright and expected day
};

// Flat; fixed at the tilt that gives most; turned to the sun by hand two and three times. In this
// order. The group's own aims are not looked at; its count, shade and hours are.
[[nodiscard]] std::vector<PlacementYield> compare_placements(const Site& site,
                                                             const PanelGroup& group,
                                                             const ControllerModel& controller,
                                                             units::LocalTime day);

}  // namespace solar
