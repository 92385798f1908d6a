// A pack as the clock needs it, from a pack as a person describes it: what the file left open is
// filled from its chemistry, and every value so filled is told.
#pragma once

#include <optional>
#include <string>
#include <vector>

#include "battery/cell/open_circuit.hpp"
#include "battery/cell/percent.hpp"
#include "battery/cell/two_well.hpp"
#include "battery/prepared.hpp"
#include "scenario/assumption.hpp"
#include "scenario/pack.hpp"
#include "units/quantities.hpp"
#include "units/result.hpp"

namespace battery {

// One pack of its kind, at one temperature.
//   kinetics       so scaled that an even discharge over the rated time gives `capacity`
//   open_circuit   over the fill of a well; its table is one of the charge left, percent.hpp. What
//                  the pack draws by: of AGM the level while it is drawn, method.md (53)
//   at_rest        likewise what it shows after a rest; the same for all but AGM
//   capacity       the rated charge, of which percent are: at the rated time and 25 degC, after
//                  ageing or as tested
//   usable         removed charge at which the planned depth is reached
//   reachable      part of the charge that the temperature lets out, as capacity_factor has it
//   locked         the rest, by the current
//   inner, lead    rested voltage to terminals, aged and at this temperature; the pack's own lead
//   charging       limits at this temperature; the absorption voltage is that at the bus
//   current_limit  continuous, of the pack's protection; nothing where it has none
//   at_start       the charge the file gives, rested
struct PackModel {
    scenario::Chemistry chemistry{};
    Kinetics kinetics;
    OpenCircuit open_circuit;
    OpenCircuit at_rest;
    units::Voltage nominal{};
    units::Charge capacity{};
    units::Charge usable{};
    units::Share reachable{1.0};
    ColdLock locked;
    units::Resistance inner{};
    units::Resistance lead{};
    Charging charging;
    std::optional<units::Voltage> pack_cut_off;
    std::optional<units::Current> current_limit;
    std::vector<scenario::PulseLimit> pulse;
    Wells at_start;
};

// Part of the charge that a slow draw gets.
[[nodiscard]] inline units::Share reachable_slowly(const PackModel& model) {
    return units::Share(1.0 - model.locked.least());
}

// What the clock steps, with a path of `shared` in front of the own lead (the shared resistance
// times the number of packs) and `stops` beyond those of the pack itself. `model` must outlive it.
[[nodiscard]] Arrangement arranged(const PackModel& model, units::Resistance shared,
                                   const Stops& stops);

//   where        key of the pack, such as "pack[0]", for errors and assumptions
//   assumptions  appended to: one for each silent key that a value was taken for
//   fails        at the key of each value that no pack can have
[[nodiscard]] units::Result<PackModel> pack_model(const scenario::Pack& pack,
                                                  const std::string& where,
                                                  units::Temperature temperature,
                                                  scenario::Assumptions& assumptions);

}  // namespace battery
