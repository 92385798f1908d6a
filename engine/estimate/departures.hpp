// What is not as planned, as far as the readings tell it from what else would explain them.
// method.md (19)
#pragma once

#include "estimate/outlook.hpp"

namespace estimate {

// Fills departures, fits and more_left.
void tell_departures(Outlook& found, const scenario::Scenario& scenario, const chance::World& world,
                     const Posterior& posterior);

// Surely from 97.5 in 100 on, probably from 80 on.
[[nodiscard]] Sure sureness(double share);

}  // namespace estimate
