// What a number of packs and panels weighs, costs and takes to carry.
#pragma once

#include <optional>
#include <vector>

#include "scenario/scenario.hpp"
#include "units/quantities.hpp"

namespace sizing {

// A figure that the scenario leaves out of one counted thing is absent, never nought.
//   weight, price  of all packs and all panels; not of the case and what is built into it
//   trips          times somebody walks, with at most goal.carry_at_most each time
struct Bill {
    std::optional<units::Mass> weight;
    std::optional<units::Price> price;
    std::optional<int> trips;
};

// Packs come in the order of the file, as many of each entry as it says; further ones are like the
// last entry, from which fewer are also left out first. Further panels are like the first entry,
// fewer are left out from the last entry on.
[[nodiscard]] Bill bill(const scenario::Scenario& scenario, int packs, int panels);

// The entry that the pack with this number, from 1, is of.
[[nodiscard]] const scenario::Pack& pack_entry(const scenario::Scenario& scenario, int number);

// Whether some pack or panel alone is heavier than what may be carried; false where the scenario
// does not say.
[[nodiscard]] bool something_is_too_heavy(const scenario::Scenario& scenario);

}  // namespace sizing
