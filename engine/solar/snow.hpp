// What snow and ice lying on panels cost over a month.
#pragma once

#include <optional>
#include <span>
#include <vector>

#include "solar/placement.hpp"
#include "solar/site.hpp"
#include "units/quantities.hpp"
#include "units/time.hpp"

namespace solar {

// One month's weather as far as snow on panels depends on it.
struct SnowyMonth {
    units::Length fallen{};                        // fresh snow of the whole month
    double falls = 0.0;                            // days with more than an inch of it
    units::Share humidity;                         // relative, mean
    units::Temperature air = units::celsius(0.0);  // mean
    units::Irradiation on_plane{};                 // of the whole month
};

// How a panel stands.
struct SnowyPanel {
    units::Angle tilt{};
    units::Length slant = 1.0 * units::metre;         // its length up the slope
    units::Length above_ground = 0.1 * units::metre;  // its lower edge: where snow piles up below
    bool strings_apart = false;  // more than one string up the slope: a quarter less is lost
};

// The share of the month's energy that is lost. [Townsend Powers 2011], method.md (50)
//   before    the month before: a third of its snow counts as well
//   accuracy  within a percent of the author's own tables; single months at one place scatter far
//             more, by half of the loss and more
[[nodiscard]] units::Share lost_to_snow(const SnowyMonth& month, const SnowyMonth& before,
                                        const SnowyPanel& panel);

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
