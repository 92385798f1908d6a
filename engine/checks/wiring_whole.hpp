// The checks that look at the whole unit: faults, packs, heat, air, and what only people can check.
#pragma once

#include "checks/wiring.hpp"
#include "checks/wiring_circuit.hpp"
#include "checks/wiring_unit.hpp"

namespace checks {

// C4: what each fuse must be able to break at its place. Fills in the prospective currents.
void check_faults(const scenario::Scenario& scenario, const BuildUnit& unit, Fit& fit);

// C8 at the inverter: its voltage against the cut-off, at its rating and at its surge.
void check_inverter_voltage(const scenario::Scenario& scenario, Fit& fit);

// C9, C10: how packs share, one taken out, and leads that are fed from both ends.
void check_packs(const scenario::Scenario& scenario, const BuildUnit& unit, Fit& fit);

// C1 for circuits that hang on another circuit's fuse.
void check_guards_from_before(const scenario::Scenario& scenario, Fit& fit);

// C12, C13: heat and hydrogen.
void check_case(const scenario::Scenario& scenario, const BuildUnit& unit, Fit& fit);

// C15, C16: for hands, eyes and authorities. And what the file does not name at all.
void check_rest(const scenario::Scenario& scenario, const Draws& draws, Fit& fit);

// The worst current of one pack: all of them, or one of them missing.
struct WorstShare {
    units::Current current{};
    bool one_missing = false;
};
[[nodiscard]] WorstShare worst_share(const BuildUnit& unit, const wiring::Feed& feed,
                                     std::size_t kind);

}  // namespace checks
