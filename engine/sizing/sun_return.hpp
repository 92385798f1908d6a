// What comes back from the sun under the members of a chance: offered, taken and kept, and what
// becomes of the rest. method.md (8)
#pragma once

#include <vector>

#include "chance/members.hpp"
#include "solar/weather/typical_sky.hpp"
#include "units/quantities.hpp"

namespace sizing {

// Of one outage, or a mean of several.
//   used       straight into loads
//   stored     into the packs
//   lost       of it, what charging does not store
//   too_cold   offered, while no pack may be charged
//   full       offered, while the packs are full, taper or take no more
//   clipped    kept back by the controller's limits before it is offered
struct SunShares {
    units::Energy used{};
    units::Energy stored{};
    units::Energy lost{};
    units::Energy too_cold{};
    units::Energy full{};
    units::Energy clipped{};

    [[nodiscard]] units::Energy offered() const { return used + stored + too_cold + full; }
    [[nodiscard]] units::Energy kept() const { return used + stored - lost; }
};

// One local day that the outage touches; percentiles by nearest rank, and mean, over the members.
//   offered   at the battery
//   taken     by loads and packs
struct SunOfADay {
    units::LocalTime midnight;
    solar::DayRange offered;
    solar::DayRange taken;
};

//   kept      of the whole outage, by loads and packs
//   offered   at the battery
//   mean      over the members; of the whole outage
//   members   that were run to the outage's end
struct SunReturn {
    solar::DayRange kept;
    solar::DayRange offered;
    std::vector<SunOfADay> days;
    SunShares mean;
    int members = 0;
};

// With so many panels and the packs as they are.
//   threads   0 takes as many as the machine has; the same for any number
[[nodiscard]] SunReturn sun_return(const chance::Members& members, int panels,
                                   unsigned threads = 0);

}  // namespace sizing
