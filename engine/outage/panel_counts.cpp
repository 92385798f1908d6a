#include "outage/panel_counts.hpp"

#include "outage/ready_sun.hpp"

namespace outage {

namespace {

std::vector<solar::PanelGroup> groups_of(std::vector<solar::PanelGroup> groups, int panels) {
    int left = panels;
    for (auto& group : groups) {
        group.count = std::min(group.count, left);
        left -= group.count;
    }
    if (!groups.empty()) groups.front().count += left;
    std::erase_if(groups, [](const auto& group) { return group.count == 0; });
    return groups;
}

}  // namespace

std::shared_ptr<const SkyModels> sky_with_panels(const Ready& ready, int panels) {
    if (!ready.sky || panels < 1) return nullptr;
    auto groups = groups_of(ready.sky->groups, panels);
    return std::make_shared<const SkyModels>(SkyModels{
        .track = solar::SunTrack(*ready.site, groups, ready.outage.starts, ready.outage.lasts),
        .controller = ready.sky->controller,
        .weather = ready.sky->weather,
        .hours = ready.sky->hours,
        .groups = std::move(groups)});
}

Ready with_panels(const Ready& ready, int panels) {
    Ready other = ready;
    other.sun = {};
    other.sky = sky_with_panels(ready, panels);
    if (other.sky) light(other);
    return other;
}

std::vector<int> panels_looked_at(const Ready& ready, int most) {
    constexpr int each = 16;   // up to here every count
    constexpr int growth = 8;  // then an eighth more at a time
    int now = 0;
    if (ready.sky)
        for (const auto& group : ready.sky->groups)
            now += group.count;
    std::vector<int> counts;
    for (int panels = 0; panels <= most; panels += panels < each ? 1 : panels / growth) {
        if (!counts.empty() && counts.back() < now && now < panels) counts.push_back(now);
        counts.push_back(panels);
    }
    if (counts.back() < now && now < most) counts.push_back(now);
    if (counts.back() < most) counts.push_back(most);
    return counts;
}

}  // namespace outage
