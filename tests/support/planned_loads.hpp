// Plans of a few loads at home, for tests of what is found in them.
#pragma once

#include <string>
#include <string_view>
#include <utility>
#include <vector>

#include "scenario/finding.hpp"
#include "scenario/scenario.hpp"
#include "support/in_english.hpp"

namespace planned_loads {

inline scenario::Load load(std::string name, double watts,
                           scenario::Outlet from = scenario::Outlet::ac) {
    scenario::Load made;
    made.name = std::move(name);
    made.from = from;
    made.draw = scenario::StatedPower{watts * units::watt};
    made.evidence = scenario::Evidence::metered;
    return made;
}

// Two days from 18:00 on, behind an inverter of 2,400 W that idles at 18 W; no pack.
inline scenario::Scenario with(std::vector<scenario::Load> loads) {
    scenario::Scenario scenario;
    scenario.outage.starts = units::LocalTime(20'000.0 * units::day + 18.0 * units::hour);
    scenario.outage.lasts = 2.0 * units::day;
    scenario.inverter.emplace().continuous = 2400.0 * units::watt;
    scenario.inverter->idle = 18.0 * units::watt;
    scenario.loads = std::move(loads);
    return scenario;
}

// The first whose text holds the words; nothing when there is none.
inline const scenario::Finding* finding(const scenario::Findings& all, std::string_view words) {
    for (const scenario::Finding& each : all)
        if (in_english(each.text).find(words) != std::string::npos) return &each;
    return nullptr;
}

}  // namespace planned_loads
