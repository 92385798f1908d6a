// What does this voltage reading mean?
#pragma once

#include <optional>

#include "handling/gauge.hpp"
#include "questions/asked.hpp"
#include "scenario/file/read.hpp"
#include "units/result.hpp"

namespace questions {

// How long the rest of the outage is lasted from now: at the low end of the reading what may be
// counted on, at its middle what half of the members last, at its high end what one in ten does.
struct FromNow {
    units::LocalTime now;
    units::Duration left{};  // of the outage
    units::Duration lasts_low{};
    units::Duration lasts{};
    units::Duration lasts_high{};
    bool survives_low = false;
    bool survives = false;
    bool survives_high = false;
};

//   from_now   where it was said when the reading was taken
struct GaugeFound {
    scenario::Scenario scenario;
    handling::Reading reading;
    handling::ChargeRead charge;
    std::optional<FromNow> from_now = {};
    scenario::Assumptions assumed = {};  // for the room
};

//   fails   as handling::gauge; where the reading was not taken within the outage
[[nodiscard]] units::Result<GaugeFound> find(const scenario::ReadScenario& read,
                                             const GaugeAsked& asked, const How& how);

}  // namespace questions
