#include "motor/start_case.hpp"

#include <algorithm>
#include <cmath>
#include <utility>

#include "motor/start.hpp"
#include "units/said.hpp"

namespace motor {

namespace {

using units::AngularVelocity;
using words::said;

constexpr double full_turn = 6.28318530717958647692;

// The usual plate of a 60 Hz four-pole motor shows 1,725 per minute: common practice, no source.
constexpr AngularVelocity usual_speed = per_minute(1725.0);
constexpr double usual_frequency = 60.0;

// The start switch opens at 70-80 % of synchronous speed: [Refrigeration text], [E161].
constexpr SpeedShare usual_cut_out{0.75};

// It starts on the mains every day, with some torque to spare: common practice, no source.
constexpr double torque_used_on_the_mains = 1.0 / 1.2;

// The nearest synchronous speed above the full-load speed.
AngularVelocity synchronous_speed(units::Frequency frequency, AngularVelocity full_load) {
    const double one_pair = full_turn * (frequency / units::hertz);
    const double pairs = std::floor(one_pair / (full_load / radian_per_second));
    return one_pair / std::max(1.0, pairs) * radian_per_second;
}

// Energy at synchronous speed over apparent power is H, method.md (13).
units::Inertia inertia_of(units::Duration constant, units::ApparentPower rated,
                          AngularVelocity synchronous) {
    const double omega = synchronous / radian_per_second;
    return 2.0 * (constant / units::second) * (rated / units::volt_ampere) / (omega * omega) *
           kilogram_square_metre;
}

// Inertia constants were taken on motors of fair efficiency; a motor that wastes most of what it
// draws turns no more for that: common practice, no source.
units::ApparentPower most_apparent_for_inertia(units::Power output) {
    return units::ApparentPower(2.0 * output);
}

words::Said times_full_load(const units::Range<Multiple>& torque) {
    return said<"{low} to {high}">(words::Number{.value = torque.low().value(), .digits = 2},
                                   words::Number{.value = torque.high().value(), .digits = 2});
}

scenario::Assumptions what_was_taken(const Shaft& shaft, scenario::MotorKind kind,
                                     DrivenLoad driven, AngularVelocity full_load,
                                     const std::string& where) {
    const KindTraits& traits = traits_of(kind);
    scenario::Assumptions taken{
        {where + ".kind",
         said<"torque at rest {at_rest} and at its peak {at_the_peak} times the full-load torque "
              "({kind})">(times_full_load(*traits.locked_torque),
                          times_full_load(*traits.breakdown_torque), in_words(kind)),
         said<"method.md of motor, Kinds">()}};
    if (!shaft.full_load_speed) {
        taken.push_back({where + ".full_load_speed",
                         said<"turns {number} times a minute at full load">(
                             words::with_decimals(full_load / per_minute(1.0), 0)),
                         said<"common practice, no source">()});
    }
    if (!shaft.drives) {
        taken.push_back(
            {where + ".drives",
             said<"drives a {load} that its motor can start at rated voltage">(in_words(driven)),
             said<"common practice, no source">()});
    }
    return taken;
}

// At rated voltage the appliance works, so a load heavier than its motor turns is not taken.
// The worst point may hide behind an earlier stall, so it is looked for again.
LoadTorque turned_on_the_mains(const InductionMotor& motor, LoadTorque load) {
    constexpr int looks = 4;
    for (int look = 0; look < looks; ++look) {
        const double used = start(motor, load, holding(motor.rated_voltage)).torque_used.value();
        if (used <= torque_used_on_the_mains) {
            break;
        }
        const double lighter = torque_used_on_the_mains / used;
        load.steady = Multiple(lighter * load.steady.value());
        load.with_speed_squared = Multiple(lighter * load.with_speed_squared.value());
    }
    return load;
}

// What the ends of a start have in common.
struct MotorAtRest {
    InductionMotor motor;
    AngularVelocity full_load_speed{};
    units::ApparentPower turning;  // what the constant of inertia is of
};

MotorAtRest known_of(const LockedRotor& locked, const Shaft& shaft, const KindTraits& traits) {
    const AngularVelocity full_load_speed = shaft.full_load_speed.value_or(
        shaft.frequency / (usual_frequency * units::hertz) * usual_speed);
    const AngularVelocity synchronous = synchronous_speed(shaft.frequency, full_load_speed);
    const units::ApparentPower rated = units::apparent_power(
        shaft.output / traits.efficiency.likely().value(), traits.running_power_factor.likely());
    return {
        .motor = {.synchronous_speed = synchronous,
                  .full_load_slip = Slip(1.0 - full_load_speed / synchronous),
                  .full_load_torque = shaft.output / full_load_speed,
                  .locked_torque = {},
                  .breakdown_torque = {},
                  .cut_out = traits.has_start_switch ? std::optional(usual_cut_out) : std::nullopt,
                  .inertia = {},
                  .rated_voltage = locked.rated_voltage,
                  .locked_current = {},
                  .running_current = rated.amount() / locked.rated_voltage,
                  .locked_power_factor = {},
                  .running_power_factor = traits.running_power_factor.likely()},
        .full_load_speed = full_load_speed,
        .turning = std::min(rated, most_apparent_for_inertia(shaft.output))};
}

}  // namespace

std::optional<StartCases> start_cases(const LockedRotor& locked, const Shaft& shaft,
                                      const std::string& where) {
    const KindTraits& traits = traits_of(locked.kind);
    if (!traits.locked_torque || !traits.breakdown_torque) {
        return std::nullopt;
    }
    const DrivenLoad drives = shaft.drives.value_or(usual_load(locked.kind));
    const DrivenLoadTraits& driven = traits_of(drives);
    const MotorAtRest known = known_of(locked, shaft, traits);
    const auto one_case = [&](Multiple locked_torque, Multiple breakdown, LoadTorque load,
                              units::Duration constant, units::Current current,
                              units::PowerFactor factor) {
        InductionMotor motor = known.motor;
        motor.locked_torque = locked_torque;
        motor.breakdown_torque = breakdown;
        motor.inertia = inertia_of(constant, known.turning, motor.synchronous_speed);
        motor.locked_current = current;
        motor.running_current = std::min(motor.running_current, current);
        motor.locked_power_factor = factor;
        return StartCase{motor, drives == DrivenLoad::compressor_against_head
                                    ? load
                                    : turned_on_the_mains(motor, load)};
    };
    return StartCases{
        .burden = units::each(one_case, units::less_is_harder(*traits.locked_torque),
                              units::less_is_harder(*traits.breakdown_torque), driven.torque,
                              units::more_is_harder(driven.inertia_constant),
                              units::more_is_harder(locked.evidence.front().current),
                              units::more_is_harder(locked.power_factor)),
        .assumptions = what_was_taken(shaft, locked.kind, drives, known.full_load_speed, where)};
}

std::optional<units::Power> shaft_output(const scenario::Motor& motor,
                                         std::optional<units::Power> running_power) {
    if (motor.horsepower) {
        return motor.horsepower;
    }
    if (!running_power) {
        return std::nullopt;
    }
    return traits_of(motor.kind).efficiency.likely().value() * *running_power;
}

}  // namespace motor
