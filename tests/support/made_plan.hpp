// A plan made by hand, so that the report is tested without the clock.
#pragma once

#include "outage/plan.hpp"
#include "scenario/scenario.hpp"
#include "sizing/fan.hpp"

namespace made {

// Four days from Wednesday 14 January 2026 18:00: a refrigerator, a breathing aid, cabin lights.
[[nodiscard]] scenario::Scenario scenario();

// 100 W wanted all the time out of `stored`; 300 W of sun from 09:00 to 15:00 are offered.
// Runs hour by hour with no losses but a tenth in the inverter.
[[nodiscard]] outage::Course course(units::Energy stored, units::Energy capacity);

// Likely with 3 kWh; earliest and latest with a fifth less and more when `uncertain`.
[[nodiscard]] outage::Plan plan(bool uncertain = true);

// What the members have stored, a fifth less and more than 3 kWh to begin with.
[[nodiscard]] sizing::Fan fan();

// The same with so much stored that it lasts.
[[nodiscard]] outage::Plan lasting_plan();

}  // namespace made
