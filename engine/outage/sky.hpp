// The skies of a plan: likely, dull and bright, as changes of what the sun offers.
#pragma once

#include <span>
#include <vector>

#include "outage/unit.hpp"
#include "scenario/scenario.hpp"
#include "solar/controller.hpp"
#include "solar/placement.hpp"
#include "solar/places/site.hpp"
#include "solar/weather/typical_sky.hpp"

namespace outage {

enum class SkyEnd { dull, likely, bright };

// What the sun offers over the outage.
//   dull, bright  every day at the quantile of clearness that makes the mean of all days of the
//                 outage fall there once in ten times; method.md (6). Planes turned away from the
//                 sun or in shade make more of thin cloud than of a clear sky: for them skies are
//                 ranked by what they give, so that the ends keep their order
//   a storm       darkens the first local day whose noon lies ahead, and what is left of the one
//                 before, to the darkest tenth of days, its middle, whichever end is asked for;
//                 method.md (7)
//   a forecast    holds each of its days in its band of the month's days: at the end's own share
//                 of the band, the middle for the likely course; solar method.md (51)
[[nodiscard]] std::vector<SunChange> sun_changes(const solar::Site& site,
                                                 std::span<const solar::PanelGroup> groups,
                                                 const solar::ControllerModel& controller,
                                                 const scenario::Outage& outage, SkyEnd end);

// One step of it, from when the outage starts; a PWM controller passes on a current.
[[nodiscard]] SunChange sun_change(const solar::SunStep& step,
                                   const solar::ControllerModel& controller,
                                   units::LocalTime starts);

// Share of days darker than each day of a dull run of this many days. method.md (6)
[[nodiscard]] units::Probability dull_quantile(double days);

}  // namespace outage
