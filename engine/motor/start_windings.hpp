// A motor at rest from the measured impedances of its two windings: the rarest evidence and the
// most exact. See method.md (17).
#pragma once

#include "motor/locked_rotor.hpp"
#include "units/quantities.hpp"

namespace motor {

// A winding's resistance and reactance at rest and the supply's frequency; reactance positive.
struct Winding {
    units::Resistance resistance{};
    units::Resistance reactance{};
};

using Capacitance = boost::units::quantity<units::si::capacitance>;
inline constexpr Capacitance farad = Capacitance::from_value(1.0);

struct StartWindings {
    Winding main;
    Winding start;
};

// The capacitor that puts the start winding's current a quarter turn before the main one's.
[[nodiscard]] Capacitance quadrature_capacitor(const StartWindings& windings,
                                               units::Frequency frequency);

// What both draw together at rest, with a capacitor in series with the start winding or none (0 F).
[[nodiscard]] Demand locked_rotor_demand(const StartWindings& windings, units::Voltage voltage,
                                         units::Frequency frequency, Capacitance in_series);

}  // namespace motor
