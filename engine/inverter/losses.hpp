// What the inverter itself takes from the battery, as three constants; method.md (1).
#pragma once

#include <optional>
#include <vector>

#include "scenario/assumption.hpp"
#include "scenario/inverter.hpp"
#include "units/quantities.hpp"
#include "units/result.hpp"

namespace inverter {

// Loss = idle + linear S + quadratic S^2 / rating. Idle is what it draws with nothing plugged in,
// counted once: efficiencies are those of the whole inverter, idle included.
struct Losses {
    units::Power idle{};     // P0
    double linear = 0.0;     // k1; may be negative when a stated curve asks for it
    double quadratic = 0.0;  // k2, at least 0
    units::Power rating{};   // S_r: the continuous rating
};

//   range      apparent at least 0; beyond the rating it extrapolates
[[nodiscard]] units::Power loss(const Losses& losses, units::ApparentPower apparent);

// The constants that agree with what is stated: any number of efficiencies, with or without idle.
//   takes      rating above 0; efficiency shares of that rating at power factor 1
//   fails      at "inverter.idle" or "inverter.efficiency[i]" where a figure is impossible alone or
//              cannot be reached together with the others (missed by more than 0.03)
//   assumes    what method.md, "Where the file is silent", says, each into `assumed`
//   source     method.md (2) to (5)
[[nodiscard]] units::Result<Losses> fit_losses(units::Power rating,
                                               std::optional<units::Power> idle,
                                               const std::vector<scenario::EfficiencyPoint>& stated,
                                               scenario::Assumptions& assumed);

}  // namespace inverter
