#include "motor/driven_load.hpp"

namespace motor {

namespace {

using scenario::MotorKind;
using units::second;

constexpr LoadTorque constant(double share) {
    return {.steady = Multiple(share), .with_speed_squared = Multiple(0.0)};
}

// Full torque at full speed, this share of it at rest.
constexpr LoadTorque parabola(double at_rest) {
    return {.steady = Multiple(at_rest), .with_speed_squared = Multiple(1.0 - at_rest)};
}

constexpr units::Ends<LoadTorque> pump_curve{parabola(0.1), parabola(0.1), parabola(0.2)};

constexpr units::Range<units::Duration> inertia(double low, double likely, double high) {
    return units::spanning<units::Duration>(low * second, likely * second, high * second);
}

// Torque: common practice, no source. Inertia of fans: [WECC load model]; of compressors and pumps
// the same, from memory; of the others common practice, no source.
constexpr DrivenLoadTraits centrifugal_pump{pump_curve, inertia(0.05, 0.1, 0.15)};
constexpr DrivenLoadTraits fan{pump_curve, inertia(0.3, 0.5, 1.0)};
constexpr DrivenLoadTraits belt_blower{pump_curve, inertia(0.5, 1.0, 2.0)};
constexpr DrivenLoadTraits compressor_equalised{{constant(0.3), constant(0.45), constant(0.6)},
                                                inertia(0.03, 0.04, 0.05)};
constexpr DrivenLoadTraits compressor_against_head{{constant(1.0), constant(1.25), constant(1.5)},
                                                   inertia(0.03, 0.04, 0.05)};
constexpr DrivenLoadTraits piston_pump{{constant(1.0), constant(1.0), constant(1.0)},
                                       inertia(0.05, 0.1, 0.2)};
constexpr DrivenLoadTraits saw_or_grinder{{constant(0.1), constant(0.1), constant(0.1)},
                                          inertia(0.5, 1.0, 2.0)};
constexpr DrivenLoadTraits hoist{{constant(1.0), constant(1.0), constant(1.2)},
                                 inertia(0.05, 0.1, 0.2)};
constexpr DrivenLoadTraits unstated{{parabola(0.1), constant(0.6), constant(1.0)},
                                    inertia(0.05, 0.1, 0.5)};

}  // namespace

units::Torque torque_of(const LoadTorque& load, const InductionMotor& motor, Slip slip) {
    const double of_full_speed = (1.0 - slip.value()) / (1.0 - motor.full_load_slip.value());
    return (load.steady.value() + load.with_speed_squared.value() * of_full_speed * of_full_speed) *
           motor.full_load_torque;
}

const DrivenLoadTraits& traits_of(DrivenLoad load) {
    switch (load) {
        case DrivenLoad::centrifugal_pump:
            return centrifugal_pump;
        case DrivenLoad::fan:
            return fan;
        case DrivenLoad::belt_blower:
            return belt_blower;
        case DrivenLoad::compressor_equalised:
            return compressor_equalised;
        case DrivenLoad::compressor_against_head:
            return compressor_against_head;
        case DrivenLoad::piston_pump:
            return piston_pump;
        case DrivenLoad::saw_or_grinder:
            return saw_or_grinder;
        case DrivenLoad::hoist:
            return hoist;
        case DrivenLoad::unstated:
            break;
    }
    return unstated;
}

words::Said in_words(DrivenLoad load) {
    using words::said;
    switch (load) {
        case DrivenLoad::centrifugal_pump:
            return said<"centrifugal pump">();
        case DrivenLoad::fan:
            return said<"fan on the shaft">();
        case DrivenLoad::belt_blower:
            return said<"blower on a belt">();
        case DrivenLoad::compressor_equalised:
            return said<"compressor at level pressures">();
        case DrivenLoad::compressor_against_head:
            return said<"compressor against pressure">();
        case DrivenLoad::piston_pump:
            return said<"piston pump">();
        case DrivenLoad::saw_or_grinder:
            return said<"saw or grinder running free">();
        case DrivenLoad::hoist:
            return said<"hoist">();
        case DrivenLoad::unstated:
            break;
    }
    return said<"load not stated">();
}

DrivenLoad usual_load(MotorKind kind) {
    switch (kind) {
        case MotorKind::split_phase:
        case MotorKind::submersible:
            return DrivenLoad::centrifugal_pump;
        case MotorKind::permanent_split_fan:
        case MotorKind::shaded_pole:
            return DrivenLoad::fan;
        case MotorKind::permanent_split_compressor:
        case MotorKind::compressor_rsir:
        case MotorKind::compressor_csir:
            return DrivenLoad::compressor_equalised;
        case MotorKind::capacitor_start:
        case MotorKind::universal:
        case MotorKind::electronic:
        case MotorKind::direct_current:
            break;
    }
    return DrivenLoad::unstated;
}

}  // namespace motor
