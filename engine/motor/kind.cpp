#include "motor/kind.hpp"

#include <cassert>

namespace motor {

namespace {

using scenario::MotorKind;
using units::Efficiency;
using units::PowerFactor;
using units::Range;
using units::second;

template <class Tagged>
constexpr Range<Tagged> of(double low, double likely, double high) {
    return units::spanning(Tagged(low), Tagged(likely), Tagged(high));
}

constexpr Range<units::Duration> seconds(double low, double likely, double high) {
    return units::spanning<units::Duration>(low * second, likely * second, high * second);
}

// Where no other source stands, the widths are common practice, no source: planner's defaults,
// not measurements. Locked-to-running ratios of split-phase and capacitor-start motors:
// [Generator manuals] motor starting tables, [Motor packets]. Locked torque of capacitor-start:
// [Motor packets]. Likely values of a range given by its ends alone are its middle.
constexpr KindTraits split_phase{
    .locked_to_running = of<Multiple>(5.0, 6.0, 7.5),
    .locked_torque = of<Multiple>(1.0, 1.4, 1.75),
    .breakdown_torque = of<Multiple>(2.0, 2.4, 2.8),
    .locked_power_factor = of<PowerFactor>(0.60, 0.75, 0.85),
    .running_power_factor = of<PowerFactor>(0.55, 0.60, 0.65),
    .efficiency = of<Efficiency>(0.50, 0.57, 0.64),
    .time_to_speed = seconds(0.2, 0.5, 1.0),
    .has_start_switch = true,
    .follows_full_load_table = true,
};

// Locked power factor: the windings of [Fitzgerald] and [Capacitor-start solution] give 0.94-1.00.
constexpr KindTraits capacitor_start{
    .locked_to_running = of<Multiple>(3.0, 4.6, 6.0),
    .locked_torque = of<Multiple>(2.0, 2.75, 3.5),
    .breakdown_torque = of<Multiple>(2.2, 2.6, 3.0),
    .locked_power_factor = of<PowerFactor>(0.70, 0.85, 0.95),
    .running_power_factor = of<PowerFactor>(0.60, 0.675, 0.75),
    .efficiency = of<Efficiency>(0.55, 0.66, 0.76),
    .time_to_speed = seconds(0.2, 0.6, 1.5),
    .has_start_switch = true,
    .follows_full_load_table = true,
};

// Ratio: code letter B of the fan motors in [Motor packets] gives 2.0-3.1.
constexpr KindTraits permanent_split_fan{
    .locked_to_running = of<Multiple>(1.8, 2.5, 3.5),
    .locked_torque = of<Multiple>(0.3, 0.5, 0.7),
    .breakdown_torque = of<Multiple>(1.5, 2.0, 2.5),
    .locked_power_factor = of<PowerFactor>(0.60, 0.75, 0.90),
    .running_power_factor = of<PowerFactor>(0.70, 0.825, 0.95),
    .efficiency = of<Efficiency>(0.55, 0.62, 0.70),
    .time_to_speed = seconds(1.0, 2.0, 5.0),
};

// Locked power factor: stalled impedance of [NREL motor stall] and [WECC load model].
constexpr KindTraits permanent_split_compressor{
    .locked_to_running = of<Multiple>(4.0, 5.5, 7.0),
    .locked_torque = of<Multiple>(0.3, 0.55, 0.8),
    .breakdown_torque = of<Multiple>(2.0, 2.25, 2.5),
    .locked_power_factor = of<PowerFactor>(0.70, 0.72, 0.75),
    .running_power_factor = of<PowerFactor>(0.90, 0.935, 0.97),
    .efficiency = of<Efficiency>(0.75, 0.80, 0.85),
    .time_to_speed = seconds(0.1, 0.2, 0.3),
    .follows_full_load_table = true,
};

// The weakest ratios of all: no published current trace of a household compressor was read.
constexpr KindTraits compressor_rsir{
    .locked_to_running = of<Multiple>(4.0, 7.0, 12.0),
    .locked_torque = of<Multiple>(0.8, 1.1, 1.5),
    .breakdown_torque = of<Multiple>(2.0, 2.25, 2.5),
    .locked_power_factor = of<PowerFactor>(0.60, 0.75, 0.85),
    .running_power_factor = of<PowerFactor>(0.55, 0.65, 0.95),
    .efficiency = of<Efficiency>(0.60, 0.71, 0.82),
    .time_to_speed = seconds(0.1, 0.2, 0.5),
    .has_start_switch = true,
    .follows_full_load_table = true,
};

constexpr KindTraits compressor_csir{
    .locked_to_running = of<Multiple>(4.0, 6.0, 9.0),
    .locked_torque = of<Multiple>(2.0, 2.5, 3.0),
    .breakdown_torque = of<Multiple>(2.0, 2.25, 2.5),
    .locked_power_factor = of<PowerFactor>(0.70, 0.85, 0.95),
    .running_power_factor = of<PowerFactor>(0.60, 0.775, 0.95),
    .efficiency = of<Efficiency>(0.60, 0.71, 0.82),
    .time_to_speed = seconds(0.1, 0.2, 0.5),
    .has_start_switch = true,
    .follows_full_load_table = true,
};

// Ratio: [Submersible handbook] motor tables, from memory.
constexpr KindTraits submersible{
    .locked_to_running = of<Multiple>(5.9, 6.2, 6.6),
    .locked_torque = of<Multiple>(1.0, 1.25, 1.5),
    .breakdown_torque = of<Multiple>(2.0, 2.25, 2.5),
    .locked_power_factor = of<PowerFactor>(0.60, 0.75, 0.85),
    .running_power_factor = of<PowerFactor>(0.65, 0.80, 0.95),
    .efficiency = of<Efficiency>(0.50, 0.59, 0.68),
    .time_to_speed = seconds(0.1, 0.2, 0.5),
    .has_start_switch = true,
    .follows_full_load_table = true,
};

constexpr KindTraits shaded_pole{
    .locked_to_running = of<Multiple>(1.2, 1.7, 2.5),
    .locked_torque = of<Multiple>(0.2, 0.3, 0.4),
    .breakdown_torque = of<Multiple>(1.2, 1.35, 1.5),
    .locked_power_factor = of<PowerFactor>(0.50, 0.60, 0.70),
    .running_power_factor = of<PowerFactor>(0.50, 0.575, 0.65),
    .efficiency = of<Efficiency>(0.15, 0.25, 0.35),
    .time_to_speed = seconds(0.5, 1.0, 3.0),
};

constexpr KindTraits universal{
    .locked_to_running = of<Multiple>(1.5, 2.5, 5.0),
    .locked_torque = {},
    .breakdown_torque = {},
    .locked_power_factor = of<PowerFactor>(0.80, 0.90, 0.95),
    .running_power_factor = of<PowerFactor>(0.85, 0.91, 0.97),
    .efficiency = of<Efficiency>(0.45, 0.55, 0.65),
    .time_to_speed = seconds(0.1, 0.2, 0.5),
};

// It ramps up; what flows before that is the charging of a capacitor, under 10 ms.
constexpr KindTraits electronic{
    .locked_to_running = of<Multiple>(1.0, 1.2, 1.5),
    .locked_torque = {},
    .breakdown_torque = {},
    .locked_power_factor = of<PowerFactor>(0.55, 0.80, 0.98),
    .running_power_factor = of<PowerFactor>(0.55, 0.765, 0.98),
    .efficiency = of<Efficiency>(0.75, 0.82, 0.88),
    .time_to_speed = seconds(5.0, 15.0, 30.0),
};

}  // namespace

const KindTraits& traits_of(scenario::MotorKind kind) {
    switch (kind) {
        case MotorKind::split_phase:
            return split_phase;
        case MotorKind::capacitor_start:
            return capacitor_start;
        case MotorKind::permanent_split_fan:
            return permanent_split_fan;
        case MotorKind::permanent_split_compressor:
            return permanent_split_compressor;
        case MotorKind::compressor_rsir:
            return compressor_rsir;
        case MotorKind::compressor_csir:
            return compressor_csir;
        case MotorKind::submersible:
            return submersible;
        case MotorKind::shaded_pole:
            return shaded_pole;
        case MotorKind::universal:
            return universal;
        case MotorKind::electronic:
            return electronic;
        case MotorKind::direct_current:
            break;
    }
    assert(kind != MotorKind::direct_current && "a 12 V motor has no alternating-current start");
    return universal;
}

words::Said in_words(scenario::MotorKind kind) {
    using words::said;
    switch (kind) {
        case MotorKind::split_phase:
            return said<"split-phase">();
        case MotorKind::capacitor_start:
            return said<"capacitor-start">();
        case MotorKind::permanent_split_fan:
            return said<"permanent-split capacitor, fan or blower">();
        case MotorKind::permanent_split_compressor:
            return said<"permanent-split capacitor, compressor">();
        case MotorKind::compressor_rsir:
            return said<"refrigerator compressor, low starting torque">();
        case MotorKind::compressor_csir:
            return said<"refrigerator compressor, high starting torque">();
        case MotorKind::submersible:
            return said<"submersible, two-wire">();
        case MotorKind::shaded_pole:
            return said<"shaded-pole">();
        case MotorKind::universal:
            return said<"universal (brushes)">();
        case MotorKind::electronic:
            return said<"electronically driven">();
        case MotorKind::direct_current:
            return said<"direct-current">();
    }
    return {};
}

}  // namespace motor
