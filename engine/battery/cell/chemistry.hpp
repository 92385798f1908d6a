// What is taken for a pack of a chemistry when the file is silent. All voltages and resistances are
// those of a 12 V pack (six lead-acid cells, four LiFePO4 cells) at 25 degC.
#pragma once

#include <optional>

#include "battery/cell/open_circuit.hpp"
#include "scenario/pack.hpp"
#include "units/quantities.hpp"
#include "words/said.hpp"

namespace battery {

// A value with a key of references.md, or "common practice, no source".
template <class T>
struct Sourced {
    T value{};
    words::Said source;
};

// What charging meets in a 12 V pack of 100 Ah; see ChargingResistance.
struct ChargingOf100AmpereHours {
    units::Resistance when_empty{};
    double rise = 0.0;
    double beyond = 0.353;  // of a fit to one AGM battery above its rested voltage, 0.20 to 0.31 C
};

//   resistance      rested voltage to terminals of a 100 Ah pack; others have it in inverse
//                   proportion to their capacity
//   charging        likewise while charge goes in; nothing where it is the same
//   charge_rate     largest charging current over capacity
//   pack_cut_off    at which the pack's own protection opens; nothing where there is none
//   coldest_charge  below it no charge is accepted; nothing where charging is not forbidden
//   usable          part of the stated capacity that an emergency may draw
//   coulombic       of charging; nothing where it falls as the pack fills, charge_efficiency.hpp
//   self_discharge  part lost in a month (730.5 h) of standing at 20 degC
struct ChemistryDefaults {
    words::Said name;  // "flooded lead-acid"
    double cells = 6.0;
    units::Voltage nominal{};
    Sourced<units::Share> available;
    Sourced<units::Frequency> rate;
    Sourced<units::Duration> rated_over;
    Sourced<units::Resistance> resistance_of_100_ampere_hours;
    Sourced<std::optional<ChargingOf100AmpereHours>> charging;
    Sourced<units::Frequency> charge_rate;
    Sourced<units::Voltage> absorption;
    Sourced<units::Voltage> floating;
    Sourced<std::optional<units::Voltage>> pack_cut_off;
    Sourced<std::optional<units::Temperature>> coldest_charge;
    Sourced<units::Share> usable;
    Sourced<std::optional<units::Efficiency>> coulombic;
    Sourced<units::Share> self_discharge;
    words::Said open_circuit_source;
};

[[nodiscard]] const ChemistryDefaults& defaults_of(scenario::Chemistry chemistry);

// Rested voltage of a 12 V pack over the charge left, percent.hpp. Gel has no table of its own:
// that of a valve-regulated 104 Ah battery stands in for it.
[[nodiscard]] const OpenCircuit& open_circuit_of(scenario::Chemistry chemistry);

// The voltage from which a 12 V AGM pack sags while it is drawn, behind its default resistance,
// over the fill of a well: lower than its rested voltage, and with a knee. method.md (53)
//   lowest   charge at fill 0, below 1
[[nodiscard]] OpenCircuit agm_level_while_drawn(units::StateOfCharge lowest);

}  // namespace battery
