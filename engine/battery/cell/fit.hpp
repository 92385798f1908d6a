// Finds the two wells that reproduce a maker's table of capacity against discharge time.
#pragma once

#include <span>

#include "battery/cell/peukert.hpp"
#include "battery/cell/two_well.hpp"
#include "units/result.hpp"

namespace battery {

// residual: root mean square of (fitted / row - 1) over the rows; 0 for an exact fit
struct Fit {
    Kinetics kinetics;
    units::Share residual{};
};

// From two rows, the rate being known (say that of the chemistry). method.md (11)
[[nodiscard]] units::Result<Fit> fit_two_rows(const RatedCharge& first, const RatedCharge& second,
                                              units::Frequency rate);

// From three rows or more: exactly through three, the least relative error through more.
//   fails  at "rows" when there are fewer than three, when a row is not positive or two have the
//          same time, and when no two wells describe them (a row gives more charge in less time,
//          or all give the same)
[[nodiscard]] units::Result<Fit> fit_rows(std::span<const RatedCharge> rows);

}  // namespace battery
