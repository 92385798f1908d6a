#include "solar/placement_comparison.hpp"

namespace solar {

namespace {

using namespace units;
using Groups = std::vector<PanelGroup>;

Groups placed(Groups groups, const std::vector<scenario::Aim>& aims) {
    const bool flat = aims.size() == 1 && aims.front().tilt == Angle{};
    for (PanelGroup& group : groups) {
        group.aims = aims;
        group.warmer_than_nominal = flat ? flat_on_ground_warmer : TemperatureDifference{};
    }
    return groups;
}

bool any(const Groups& groups, bool (*holds)(const PanelGroup&)) {
    return std::any_of(groups.begin(), groups.end(), holds);
}

}  // namespace

std::vector<PlacementYield> compare_placements(const Site& site,
                                               std::span<const PanelGroup> described,
                                               const ControllerModel& controller, LocalTime day) {
    std::vector<PlacementYield> compared;
    if (described.empty()) return compared;
    Groups groups(described.begin(), described.end());
    for (PanelGroup& group : groups)
        group.covered_days.clear();
    const auto add = [&](PlacementKind kind, const Groups& as) {
        compared.push_back({kind, as.front().aims, day_range(site, as, controller, day)});
    };
    add(PlacementKind::as_described, groups);
    if (any(groups, [](const PanelGroup& group) { return !group.shade.empty(); })) {
        Groups open = groups;
        for (PanelGroup& group : open)
            group.shade.clear();
        add(PlacementKind::without_shade, open);
    }
    if (any(groups, [](const PanelGroup& group) { return !group.out.empty(); })) {
        Groups always = groups;
        for (PanelGroup& group : always)
            group.out.clear();
        add(PlacementKind::never_taken_in, always);
    }
    const Plane best = best_fixed_plane(site, day);
    const auto fixed = [&](Angle tilt) {
        return std::vector<scenario::Aim>{{.at = {}, .tilt = tilt, .azimuth = best.azimuth}};
    };
    add(PlacementKind::flat, placed(groups, fixed({})));
    add(PlacementKind::best_fixed, placed(groups, fixed(best.tilt)));
    add(PlacementKind::turned_twice, placed(groups, aims_at_the_sun(site, day, 2)));
    add(PlacementKind::turned_three_times, placed(groups, aims_at_the_sun(site, day, 3)));
    return compared;
}

}  // namespace solar
