// On which days of an outage snow covers a group of panels.
#pragma once

#include <optional>
#include <span>
#include <vector>

#include "solar/placement.hpp"
#include "solar/places/site.hpp"
#include "units/quantities.hpp"
#include "units/time.hpp"

namespace solar {

// Share of days on which an inch of snow or more falls, by the month's mean warmth. method.md (52)
[[nodiscard]] units::Probability snowy_days(units::Temperature month);

// How snow comes to lie on a group, month by month, over an outage: the other months stay without.
//   told   share of days with snow, where something better than the warmth tells it
//   gives  nothing where no warmth is known, all months are too warm or no snow falls
[[nodiscard]] std::vector<SnowOfMonth> snow_of_months(const Site& site, const PanelGroup& group,
                                                      units::LocalTime starts,
                                                      units::Duration lasts,
                                                      std::optional<units::Probability> told = {});

// The local days on which snow covers the group, from the one that begins at `first`; as many as
// there are draws. A fall covers it, and goes after as many days as the month's mean has. (52)
[[nodiscard]] std::vector<bool> covered_by_snow(const PanelGroup& group, units::LocalTime first,
                                                std::span<const SnowDraw> draws);

}  // namespace solar
