// The checks that look at the whole unit: faults, packs, heat, air, and what only people can check.
#pragma once

#include "fitting/circuit.hpp"
#include "fitting/unit.hpp"
#include "fitting/wiring.hpp"

namespace fitting {

// C4: what each fuse must be able to break at its place. Fills in the prospective currents.
void check_faults(const scenario::Scenario& scenario, const BuildUnit& unit, Fit& fit);

// C8 at the inverter: its voltage against the cut-off, at its rating and at its surge.
void check_inverter_voltage(const scenario::Scenario& scenario, Fit& fit);

// C9, C10: how packs share, one taken out, and leads that are fed from both ends.
void check_packs(const scenario::Scenario& scenario, const BuildUnit& unit, Fit& fit);

// C9 where packs may open one after another at the inverter's rating.
[[nodiscard]] Check packs_open_in_turn();

// C1 for circuits that depend on another circuit's fuse.
void check_guards_from_before(const scenario::Scenario& scenario, Fit& fit);

// C3 for a fuse behind a fuse: the nearer one to the fault is to open first.
void check_order_of_fuses(const scenario::Scenario& scenario, Fit& fit);

// C11 and C1: loads made for another voltage, and kinds of current mixed on one circuit.
void check_loads(const scenario::Scenario& scenario, const BuildUnit& unit, Fit& fit);

// C12, C13: heat and hydrogen.
void check_case(const scenario::Scenario& scenario, const BuildUnit& unit, Fit& fit);

// C15, C16: for hands, eyes and authorities. And what the file does not name at all.
void check_rest(const scenario::Scenario& scenario, const Draws& draws, Fit& fit);

// What the inverter makes the packs give: as solved, and where its voltage would fall below the
// cut-off, as much as it draws there. More does not flow, for it switches off; so softer packs and
// thinner wires never make it less.
//   shares   of the sources, in their order
struct Asked {
    std::vector<units::Current> shares;
    units::Current main{};
    units::Voltage bus{};
};
[[nodiscard]] Asked asked_at_most(const wiring::Feed& feed, units::Voltage cutoff);

// The worst current of one pack: all of them, or one of them missing.
//   at_lowest   for the same power at the cut-off, at which fuses and wires are reckoned
struct WorstShare {
    units::Current current{};
    units::Current at_lowest{};
    bool one_missing = false;
};
[[nodiscard]] WorstShare worst_share(const BuildUnit& unit, const wiring::Feed& feed,
                                     std::size_t kind);

// What one pack of a kind gives and takes at most, with all of them or one missing.
struct PackCurrents {
    WorstShare given;            // at the inverter's rating and beside all 12 V loads
    units::Current for_hours{};  // of it, at the lowest voltage
    units::Current further{};
    units::Current taken{};  // of all chargers and panels at once
};
[[nodiscard]] PackCurrents pack_currents(const BuildUnit& unit, const Fit& fit, std::size_t kind);

}  // namespace fitting
