// What the kind of a motor tells when its plate is silent. See method.md, "Kinds".
#pragma once

#include <optional>

#include "scenario/load.hpp"
#include "units/quantities.hpp"
#include "units/range.hpp"
#include "words/said.hpp"

namespace motor {

// How many times a named reference; not bounded by 1.
using Multiple = units::Fraction<struct MultipleMeaning>;

// A speed or torque lag: (synchronous - actual) / synchronous speed, 1 at rest.
using Slip = units::Fraction<struct SlipMeaning>;

struct KindTraits {
    units::Range<Multiple> locked_to_running;             // current, at full voltage
    std::optional<units::Range<Multiple>> locked_torque;  // of full-load torque; absent: no curve
    std::optional<units::Range<Multiple>> breakdown_torque;
    units::Range<units::PowerFactor> locked_power_factor;
    units::Range<units::PowerFactor> running_power_factor;  // at full load
    units::Range<units::Efficiency> efficiency;             // at full load
    units::Range<units::Duration> time_to_speed;            // low to high inertia, full voltage
    bool has_start_switch = false;
    bool follows_full_load_table = false;  // [NEC] 430.248 describes it
};

// For every kind but direct_current, which has no alternating-current start.
[[nodiscard]] const KindTraits& traits_of(scenario::MotorKind kind);

// "split-phase", as in "a split-phase motor"
[[nodiscard]] words::Said in_words(scenario::MotorKind kind);

}  // namespace motor
