// Packs that differ on one bus at one moment: who gives, who takes, and what the bus shows.
#pragma once

#include <span>
#include <vector>

#include "units/quantities.hpp"

namespace battery {

// One pack behind its own path. Currents are positive out of it.
//   giving, taking   rested voltage to where the paths meet, for each direction; above 0
//   gives, takes     false where its protection is open, or charging is forbidden
struct PackOnBus {
    units::Voltage rested{};
    units::Resistance giving{};
    units::Resistance taking{};
    bool gives = true;
    bool takes = true;
};

//   voltage    at the far end of the shared path; the higher of the two at which the power flows
//   currents   one a pack, in their order
//   possible   false when the power cannot be had: the point is then that of the largest power
//   at_most    the largest power, where it is not possible
struct SharedOut {
    units::Voltage voltage{};
    std::vector<units::Current> currents;
    bool possible = true;
    units::Power at_most{};
};

//   packs      at least one that gives
//   power      positive is taken from the bus; may be zero, when packs only equalise
//   source     method.md (26) to (30)
[[nodiscard]] SharedOut shared_at_power(std::span<const PackOnBus> packs, units::Power power,
                                        units::Resistance shared = {});
[[nodiscard]] SharedOut shared_at_current(std::span<const PackOnBus> packs, units::Current current,
                                          units::Resistance shared = {});

}  // namespace battery
