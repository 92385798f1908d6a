// The same panels placed in other ways: what aiming and tilting by hand are worth.
#pragma once

#include <span>
#include <string>
#include <vector>

#include "scenario/panel.hpp"
#include "solar/weather/typical_sky.hpp"

namespace solar {

enum class PlacementKind {
    as_described,
    without_shade,   // as described, in the open; only where there is shade
    never_taken_in,  // as described, out all day; only where there are hours outside
    flat,
    best_fixed,    // towards the equator at its best tilt for the day
    turned_twice,  // towards the sun, by hand, at even parts of the day
    turned_three_times,
};

struct PlacementYield {
    PlacementKind kind{};
    std::vector<scenario::Aim> aims;  // of the first group
    DayRange day;                     // all panels, at the battery, through the one controller
};

// One whole day like `day`, in the order of PlacementKind. Shade and hours outside are the panels'
// own in every row but those that say otherwise; covered days are not counted.
[[nodiscard]] std::vector<PlacementYield> compare_placements(const Site& site,
                                                             std::span<const PanelGroup> groups,
                                                             const ControllerModel& controller,
                                                             units::LocalTime day);

}  // namespace solar
