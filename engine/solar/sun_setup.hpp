// Everything the sun's side of an outage needs, from what a scenario says.
#pragma once

#include <memory>
#include <string>
#include <vector>

#include "scenario/scenario.hpp"
#include "solar/placement.hpp"
#include "solar/places/site.hpp"
#include "solar/weather/weather_summary.hpp"
#include "units/result.hpp"

namespace solar {

struct SunSetup {
    Site site;
    std::vector<PanelGroup> groups;
    ControllerModel controller;
    std::shared_ptr<const WeatherYear> hours;  // of a weather file; empty without one
    std::optional<WeatherSummary> file;        // what that file amounts to
    scenario::Findings findings;
    scenario::Assumptions assumptions;
};

// The weather file's months stand for the place when one is given; the person's own latitude and
// figures still win over it.
//   folder  of the scenario, in which place.weather_file lies; empty: the working folder
//   fails   at the key of "place" or with the lines of the weather file
[[nodiscard]] units::Result<SunSetup> sun_setup(const scenario::Scenario& scenario,
                                                const std::string& folder);

}  // namespace solar
