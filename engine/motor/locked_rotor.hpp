// What a motor at rest draws in the instant it is switched on: a range, from the best evidence.
// See method.md, "Demand".
#pragma once

#include <optional>
#include <string>
#include <vector>

#include "motor/kind.hpp"
#include "scenario/assumption.hpp"
#include "scenario/finding.hpp"
#include "scenario/load.hpp"
#include "units/quantities.hpp"
#include "units/range.hpp"
#include "units/result.hpp"

namespace motor {

// Best first.
enum class Evidence { plate_current, code_letter, full_load_table, running_draw };

[[nodiscard]] words::Said in_words(Evidence evidence);

// What one kind of evidence says of the current at rated voltage.
struct Estimate {
    Evidence from = Evidence::running_draw;
    units::Range<units::Current> current;
};

struct LockedRotor {
    scenario::MotorKind kind = scenario::MotorKind::split_phase;
    units::Voltage rated_voltage{};
    units::Range<units::Current> current{};  // at rated voltage
    units::Range<units::PowerFactor> power_factor{};
    std::optional<units::Range<units::Share>>
        let_through{};                 // by a soft-start device; in `current`
    std::vector<Estimate> evidence{};  // best first, never empty; before any soft-start device
    scenario::Assumptions assumptions{};
    scenario::Findings findings{};
};

// Where a motor stands in the scenario and what else is known of it.
struct Installation {
    std::string where;                                          // "load[2].motor"
    units::Voltage supply{};                                    // the inverter's rated output
    std::optional<units::Range<units::Power>> running_power{};  // real, when running
    std::optional<units::PowerFactor> running_power_factor{};
};

// Ranges are taken from the best evidence there is; never averaged. Kinds of evidence that
// disagree leave a finding.
//   fails  at the motor's keys: a direct-current motor; a voltage more than 10 % off the supply
//          (a 230 V motor on a 120 V unit); a code letter that cannot be used or has no
//          horsepower; a locked-rotor current below the full-load current; no usable evidence
[[nodiscard]] units::Result<LockedRotor> locked_rotor(const scenario::Motor& motor,
                                                      const Installation& installation);

// One end of the demand, fit to be added to other loads: real and reactive apart.
struct Demand {
    units::Current current{};
    units::ApparentPower apparent;
    units::Power real{};
    units::ReactivePower reactive;  // positive lagging
};

// A stalled motor is an impedance: current goes with the voltage, power with its square,
// method.md (1). Low, likely and high take the same ends of current and power factor.
[[nodiscard]] units::Ends<Demand> demand_at(const LockedRotor& motor, units::Voltage actual);

// "Starting watts" of a printed list, which expects a generator that sags: torque and demand are
// then those of a lower voltage. Kept apart, so that it is never taken for the demand at full
// volts.
using ListedStart = units::Distinct<struct ListedStartMeaning, units::Power>;

// Share of the locked-rotor current that a series soft-start device lets through, where one is
// fitted: 0.35-0.5, common practice, no source. Torque goes with its square.
[[nodiscard]] units::Range<units::Share> let_through_by_soft_start();

}  // namespace motor
