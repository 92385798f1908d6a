#include "command_line/left_unsaid.hpp"

#include <algorithm>

#include "scenario/file/placed.hpp"
#include "solar/places/places.hpp"

namespace command_line {

using words::said;
void warn_of_what_is_left_unsaid(scenario::ReadScenario& read) {
    const auto& scenario = read.scenario;
    units::Errors warnings;
    if (scenario.loads.empty()) {
        warnings.push_back({.where = "load",
                            .found = said<"no load is described, so nothing is drawn">(),
                            .remedy = said<"add a [[load]] for each appliance that is to run">()});
    }
    const auto& place = scenario.place;
    const bool name_alone = place.name && !place.latitude && !place.weather_file;
    // With panels it is refused where the sun is asked for.
    if (name_alone && scenario.panels.empty()) {
        if (auto known = solar::known_place(*place.name); !known) {
            warnings.insert(warnings.end(), known.error().begin(), known.error().end());
        }
    }
    for (auto& warning : scenario::placed(std::move(warnings), read)) {
        read.warnings.push_back(std::move(warning));
    }
    std::ranges::stable_sort(read.warnings, {}, &units::Error::line);
}

}  // namespace command_line
