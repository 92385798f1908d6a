// A motor of the scenario, ready to be switched on.
#pragma once

#include <string>

#include "motor/locked_rotor.hpp"
#include "motor/start.hpp"
#include "motor/start_case.hpp"
#include "scenario/load.hpp"
#include "starting/ends.hpp"
#include "starting/inverter.hpp"
#include "units/quantities.hpp"
#include "units/range.hpp"
#include "units/result.hpp"

namespace starting {

// Of one item of a load, at its own plug.
struct RunningDraw {
    units::Range<units::Power> real{};
    units::PowerFactor factor{1.0};  // lagging
};

// What one item's motor does at the voltage an unburdened inverter holds, at one end.
struct RunUp {
    bool comes_up = true;
    units::Duration time{};      // to speed; of a motor that stalls, until it is switched off
    units::Share torque_used{};  // load over motor torque at its worst; 1 stalls; unbounded
};

struct StartingMotor {
    std::string name{};
    std::string where{};  // "load[2]"
    motor::LockedRotor locked{};
    units::Ends<motor::Demand> demand{};  // at the inverter's voltage
    std::optional<motor::StartCases> cases{};
    units::Ends<RunUp> at_full_voltage{};
    RunningDraw running{};
    bool medical = false;
    bool sensitive_to_waveform = false;
    scenario::Assumptions assumptions{};
    scenario::Findings findings{};
};

// A motor that does not run in 5 s is to be switched off: [Welding-generator handbook].
inline constexpr units::Duration given_up_after = 5.0 * units::second;

//   takes    a load with an alternating-current motor behind the inverter
//   fails    as motor::locked_rotor
[[nodiscard]] units::Result<StartingMotor> starting_motor(
    const scenario::Load& load, const std::string& where, const RunningDraw& running,
    const InverterSide& inverter, std::optional<motor::DrivenLoad> drives = {});

// The run-up behind a source, at one end of the motor's range.
[[nodiscard]] RunUp run_up(const StartingMotor& motor, End end, const motor::Source& source,
                           units::Share fundamental);

// Only the fundamental of a quasi-square wave turns the motor.
[[nodiscard]] motor::Source seen_by_motor(motor::Source source, units::Share fundamental,
                                          const std::optional<units::Range<units::Share>>& softened,
                                          End end);

}  // namespace starting
