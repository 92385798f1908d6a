// The voltages at which a step ends, expressed as rested voltages of the available well: what is
// measured at a terminal becomes a threshold on the state. method.md (21) to (24)
#pragma once

#include "battery/substep.hpp"

namespace battery {

enum class Ending {
    completed,
    available_well_empty,
    cut_off,       // at the far end of the path
    pack_cut_off,  // at the pack's terminals
    current_limit,
    cannot_be_delivered,  // no voltage at which the packs give this power
    usable_limit,
    voltage_restored,
    charge_restored,
    full,
    pack_restored,  // a pack of a bank that had stopped giving is charged again
};

// The first threshold that a falling rested voltage meets; minus infinity when none can be.
struct Level {
    double voltage = -std::numeric_limits<double>::infinity();
    Ending ending = Ending::completed;

    constexpr void raise(double other, Ending reason) {
        if (other > voltage) *this = {other, reason};
    }
};

// The rested voltage at which the available well is empty for a draw of this current. What the cold
// locks grows with it.
[[nodiscard]] inline double empty_level(const Prepared& pack, double current) {
    if (!pack.locks_by_rate) return pack.empty_voltage;
    const units::StateOfCharge fill(pack.locked.at_amperes(current));
    return pack.open_circuit->voltage(fill) / units::volt;
}
// Likewise for a power, whose current at that very level it is.
[[nodiscard]] double empty_level(const Prepared& pack, AtPower demand);

[[nodiscard]] inline Level falling_level(const Prepared& pack, AtPower demand) {
    Level level;
    const double power = demand.amount;
    if (!(power > 0.0)) return level;
    level = {pack.locks_by_rate ? empty_level(pack, demand) : pack.empty_voltage,
             Ending::available_well_empty};
    // A threshold beyond the largest power is met only after that: the voltage would be the lower
    // of the two at which this power flows.
    level.raise(2.0 * std::sqrt(pack.resistance * power), Ending::cannot_be_delivered);
    if (pack.cut_off > 0.0 && pack.cut_off * pack.cut_off >= pack.resistance * power)
        level.raise(pack.cut_off + pack.resistance * power / pack.cut_off, Ending::cut_off);
    if (pack.current_above * pack.current_above * pack.resistance <= power)
        level.raise(power / pack.current_above + pack.resistance * pack.current_above,
                    Ending::current_limit);
    if (pack.pack_cut_off > 0.0) {
        const double under_root = pack.pack_cut_off * pack.pack_cut_off - 4.0 * pack.path * power;
        if (under_root >= 0.0) {
            const double root = std::sqrt(under_root);
            const double sag = pack.inner * 2.0 * power / (pack.pack_cut_off + root);
            if (root >= sag) level.raise(pack.pack_cut_off + sag, Ending::pack_cut_off);
        }
    }
    return level;
}

[[nodiscard]] inline Level falling_level(const Prepared& pack, AtCurrent demand) {
    Level level;
    const double current = demand.amount;
    if (!(current > 0.0)) return level;
    level = {empty_level(pack, current), Ending::available_well_empty};
    if (pack.cut_off > 0.0) level.raise(pack.cut_off + pack.resistance * current, Ending::cut_off);
    if (pack.pack_cut_off > 0.0)
        level.raise(pack.pack_cut_off + pack.inner * current, Ending::pack_cut_off);
    if (current >= pack.current_above)
        level.raise(std::numeric_limits<double>::infinity(), Ending::current_limit);
    return level;
}

// The rested voltage at which the far end of the path stands at voltage_above while resting or
// charging: each limit of the charging current asks for one, the highest counts. Plus infinity
// while discharging, without such a stop, or when absorption holds the voltage below it. Of a pack
// whose charging voltage stands higher than that, no level: see Substeps.
[[nodiscard]] inline double rising_level(const Prepared& pack, double power_or_current,
                                         double current_there) {
    constexpr double never = std::numeric_limits<double>::infinity();
    if (power_or_current > 0.0 || pack.voltage_above == never) return never;
    if (power_or_current == 0.0 || pack.charge_floor == 0.0) return pack.voltage_above;
    if (pack.absorption < pack.voltage_above) return pack.voltage_above;  // met at rest only
    return pack.voltage_above + pack.resistance * std::max(current_there, pack.charge_floor);
}
[[nodiscard]] inline double rising_level(const Prepared& pack, AtPower demand) {
    return rising_level(pack, demand.amount, demand.amount / pack.voltage_above);
}
[[nodiscard]] inline double rising_level(const Prepared& pack, AtCurrent demand) {
    return rising_level(pack, demand.amount, demand.amount);
}

// Whether no threshold can be met while the rested voltage stays between these two at about this
// current. May say no where none is met, never yes where one is. method.md (25)
[[nodiscard, gnu::always_inline]] inline bool far_from_levels(const Prepared& pack, AtPower demand,
                                                              double lowest, double highest,
                                                              double current, double rise) {
    const double power = demand.amount;
    if (power > 0.0)
        return step::far_from_falling<double>({{pack.near_voltage},
                                               {pack.near_per_watt},
                                               {pack.limit_voltage},
                                               {pack.limit_per_watt}},
                                              {power}, {lowest}, {pack.resistance},
                                              step::Volts<double>{pack.empty_voltage});
    return highest + step::swing * (rise - pack.resistance * current) < pack.voltage_above;
}
[[nodiscard, gnu::always_inline]] inline bool far_from_levels(const Prepared& pack,
                                                              AtCurrent demand, double lowest,
                                                              double highest, double, double rise) {
    return lowest > falling_level(pack, demand).voltage &&
           highest + step::swing * rise < rising_level(pack, demand);
}

}  // namespace battery
