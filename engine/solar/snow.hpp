// What snow and ice lying on panels cost over a month.
#pragma once

#include "units/quantities.hpp"

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

}  // namespace solar
