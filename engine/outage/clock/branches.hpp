// What 12 V loads lose on the way from the bus, in the circuits that feed them. method.md (14)
#pragma once

#include <string>
#include <vector>

#include "demand/demand.hpp"
#include "scenario/finding.hpp"
#include "unit/built.hpp"
#include "units/quantities.hpp"

namespace outage {

// A load of constant power at the end of a resistance.
//   possible   false where no voltage gives it: then the point of the largest power
struct BranchEnd {
    units::Power lost{};
    units::Voltage at_load{};
    bool possible = true;
};
[[nodiscard]] BranchEnd at_end_of(units::Resistance resistance, units::Voltage bus,
                                  units::Power power);

// The steps with what the branches lose in `direct` and `in_branches`.
//   steps   those of `demand` at the same end
//   bus     its nominal voltage
[[nodiscard]] std::vector<demand::DemandStep> with_branches(
    std::vector<demand::DemandStep> steps, const demand::Demand& demand, demand::Case which,
    const std::vector<unit::Branch>& branches, units::Voltage bus);

// Branches at whose end the voltage is too low at their largest draw.
[[nodiscard]] scenario::Findings branch_findings(const demand::Demand& demand,
                                                 const std::vector<unit::Branch>& branches,
                                                 units::Voltage bus);

}  // namespace outage
