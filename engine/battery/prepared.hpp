// A pack behind its path, ready for the clock: everything that does not change from one step to
// the next, worked out once. Make a new one when the temperature, the path or a limit changes.
#pragma once

#include <array>
#include <limits>
#include <optional>

#include "battery/cell/charge_efficiency.hpp"
#include "battery/cell/cold_lock.hpp"
#include "battery/cell/open_circuit.hpp"
#include "battery/cell/two_well.hpp"
#include "battery/step/tolerances.hpp"
#include "units/quantities.hpp"

namespace battery {

// What a pack meets that takes charge, from its rested voltage to its terminals: it only heats.
//   when_empty  at no charge, and at this temperature; the inner resistance where that is more;
//               zero is a pack that meets the inner resistance alone
//   rise        how much steeper it gets towards full charge; at charge S it is when_empty *
//               (1 + rise * S / (1.001 - S)). method.md (60)
//   rated       the charge of which S is a share
//   knee        current up to which that holds, as a magnitude, above zero
//   beyond      part of it that what flows beyond the knee meets, above 0 to 1. (61)
struct ChargingResistance {
    units::Resistance when_empty{};
    double rise = 0.0;
    units::Charge rated{};
    units::Current knee{};
    double beyond = 1.0;
    friend bool operator==(const ChargingResistance&, const ChargingResistance&) = default;
};

// How a pack may be charged. All values are of one pack.
//   largest     current at the terminals, as a magnitude; nothing is no limit
//   absorption  voltage at the far end of the path that charging holds and does not pass
//   coulombic   part of the charge at the terminals that arrives in the wells; an Efficiency where
//               it is the same at every fill
//   resistance  what charging meets in place of the inner resistance
struct Charging {
    bool allowed = true;
    std::optional<units::Current> largest = {};
    std::optional<units::Voltage> absorption = {};
    ChargeEfficiency coulombic = {};
    ChargingResistance resistance = {};
};

// What ends a step early. Each is looked for only while it can happen: the first four and the
// last while discharging, the others while resting or charging.
struct Stops {
    std::optional<units::Voltage> cut_off = {};  // at the far end of the path, reached from above
    std::optional<units::Voltage> pack_cut_off = {};   // at the pack's own terminals
    std::optional<units::Current> current_above = {};  // out of the pack
    std::optional<units::Charge> removed_above = {};   // the usable part of the charge is drawn
    std::optional<units::Voltage> voltage_above = {};  // at the far end of the path: a restart
    std::optional<units::Charge> removed_below = {};   // that much is charged again
    std::optional<units::Charge> filled_to = {};       // removed charge at which the pack counts as
        // full; ends a step only when it was above before
};

// What one pack, and what it feeds, is made of.
//   at_rest    what it shows long after a draw, over the same fill; nothing where that is what it
//              is drawn by. No step is worked by it: rest.hpp
//   inner      from the rested voltage to the pack's terminals
//   path       from there to where power is taken: own lead, and a path shared by n packs n times
//   reachable  part of the charge that the temperature lets out, above 0 to 1
//   locked     the rest of it, where it depends on the current; reachable is then what a slow draw
//              gets
struct Arrangement {
    Kinetics kinetics = {};
    const OpenCircuit* open_circuit = nullptr;  // must outlive what is prepared from it
    const OpenCircuit* at_rest = nullptr;       // likewise
    units::Resistance inner{};
    units::Resistance path{};
    units::Share reachable{1.0};
    ColdLock locked = {};
    Charging charging = {};
    Stops stops = {};
};

inline constexpr units::Voltage default_tolerance = step::voltage_change;
inline constexpr double default_fill_tolerance = step::fill_change;

// Plain numbers in SI units for the inner loop; see Arrangement for what they mean. A limit that is
// not there is an infinity, so that comparing with it is enough.
struct Prepared {
    const OpenCircuit* open_circuit = nullptr;
    double total = 1.0;
    double per_total = 1.0;
    double width = 1.0;       // c
    double bound = 0.0;       // 1 - c
    double head_gain = 0.0;   // 1/c; 0 with one well
    double bound_gain = 0.0;  // (1 - c)/c
    double rate = 0.0;        // k
    double exchange = 0.0;    // k c (1 - c)
    double inner = 0.0;
    double path = 0.0;
    double resistance = 0.0;  // both
    // Efficiency of charging, emptiest piece first: piece j holds for a removed charge of at most
    // coulombic_edge[j] and above coulombic_edge[j + 1]. The first edge is plus infinity, the last
    // minus infinity.
    std::array<double, ChargeEfficiency::most_pieces> coulombic{1.0};
    std::array<double, ChargeEfficiency::most_pieces + 1> coulombic_edge{
        std::numeric_limits<double>::infinity(), -std::numeric_limits<double>::infinity()};
    // Of charging; see ChargingResistance. Zero when_empty is none beyond the inner one.
    double charging_empty = 0.0;
    double charging_rise = 0.0;
    double per_rated = 1.0;
    double charging_knee = 0.0;
    double charging_beyond = 1.0;
    double as_rested_to = std::numeric_limits<double>::infinity();  // fill; see OpenCircuit
    bool resists = false;       // charging meets more than the inner resistance
    bool stands_above = false;  // charging has a curve of its own
    double charge_floor = 0.0;  // most negative current; 0 when charging is not allowed
    double absorption = 0.0;
    double empty_voltage = 0.0;  // rested voltage at which the available well is empty; of what is
                                 // locked by the current, at the largest
    ColdLock locked = {};
    bool locks_by_rate = false;
    double cut_off = 0.0;  // 0 is none, also for the next
    double pack_cut_off = 0.0;
    double current_above = 0.0;
    double removed_above = 0.0;
    double voltage_above = 0.0;
    double removed_below = 0.0;
    double filled_to = 0.0;
    double tolerance = 0.0;  // V
    double fill_tolerance = 0.0;
    double drift_tolerance = 0.0;  // V
    // For a glance whether any falling threshold is near, without a root or a quotient: the rested
    // voltage must stay above near_voltage + near_per_watt * power and limit_voltage +
    // limit_per_watt * power; method.md (25).
    double near_voltage = 0.0;
    double near_per_watt = 0.0;
    double limit_voltage = 0.0;
    double limit_per_watt = 0.0;
};

[[nodiscard]] Prepared prepare(const Arrangement& arrangement,
                               units::Voltage tolerance = default_tolerance);

}  // namespace battery
