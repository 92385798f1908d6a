// On which days of an outage snow covers a group of panels.
#pragma once

#include <optional>
#include <span>
#include <vector>

#include "solar/placement.hpp"
#include "solar/site.hpp"
#include "units/quantities.hpp"
#include "units/time.hpp"

namespace solar {

// Share of days on which an inch of snow or more falls, by the month's mean warmth. method.md (52)
[[nodiscard]] units::Probability snowy_days(units::Temperature month);

// How snow comes to lie on a group, month by month, over an outage: the other months stay without.
//   gives  nothing where no warmth is known or all months are too warm
[[nodiscard]] std::vector<SnowOfMonth> snow_of_months(const Site& site, const PanelGroup& group,
                                                      units::LocalTime starts,
                                                      units::Duration lasts);

// The local days on which snow covers the group, from the one that begins at `first`; as many as
// there are draws. A fall covers it, and goes after as many days as the month's mean has. (52)
[[nodiscard]] std::vector<bool> covered_by_snow(const PanelGroup& group, units::LocalTime first,
                                                std::span<const SnowDraw> draws);

// A snowy month of our choice, for what a reader should expect: 25 cm in three falls and as much in
// the month before, humidity 75 %, panels a metre long with their lower edge near the ground.
inline constexpr units::Length snow_of_the_example = 0.25 * units::metre;

struct SnowExample {
    units::Share as_it_stands;  // of the month's energy
    units::Share flat;
};

// What such a month would cost a group at this place.
//   gives  nothing where the month's mean lies above freezing, or no warmth is known
[[nodiscard]] std::optional<SnowExample> snow_example(const Site& site, const PanelGroup& group,
                                                      units::LocalTime day);

}  // namespace solar
