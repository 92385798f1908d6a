#include "solar/placement_comparison.hpp"

namespace solar {

using namespace units;

std::vector<PlacementYield> compare_placements(const Site& site, const PanelGroup& group,
                                               const ControllerModel& controller, LocalTime day) {
    const Plane best = best_fixed_plane(site, day);
    std::vector<PlacementYield> compared{
        {.placement = "flat", .aims = {{.at = {}, .tilt = {}, .azimuth = best.azimuth}}, .day = {}},
        {.placement = "fixed",
         .aims = {{.at = {}, .tilt = best.tilt, .azimuth = best.azimuth}},
         .day = {}},
        {.placement = "turned 2 times a day", .aims = aims_at_the_sun(site, day, 2), .day = {}},
        {.placement = "turned 3 times a day", .aims = aims_at_the_sun(site, day, 3), .day = {}}};
    for (PlacementYield& yield : compared) {
        PanelGroup placed = group;
        placed.aims = yield.aims;
        placed.warmer_than_nominal =
            yield.placement == "flat" ? flat_on_ground_warmer : TemperatureDifference{};
        yield.day = day_range(site, {&placed, 1}, controller, day);
    }
    return compared;
}

}  // namespace solar
