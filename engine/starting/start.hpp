// Does it start? Motors against the inverter's surge, the packs and the cable, by intervals.
// See method.md.
#pragma once

#include <optional>
#include <span>
#include <string>
#include <string_view>
#include <vector>

#include "motor/direct_current.hpp"
#include "starting/direct_side.hpp"
#include "starting/ends.hpp"
#include "starting/inverter.hpp"
#include "starting/motor.hpp"
#include "units/quantities.hpp"
#include "units/range.hpp"
#include "words/said.hpp"

namespace starting {

enum class StartVerdict { starts, marginal, will_not_start };

// In the order in which ties are told.
enum class Constraint {
    voltage_class,
    surge_power,
    surge_duration,
    torque,
    after_start,
    low_voltage,
    collapse,
    pack_current,
    fuse,
    connector,
};

[[nodiscard]] std::string_view name_of(Constraint constraint);  // "pack_current"
[[nodiscard]] words::Said in_words(Constraint constraint);      // "current limit of the packs"
[[nodiscard]] std::string_view name_of(StartVerdict verdict);   // "will_not_start"

// More packs change it.
[[nodiscard]] bool is_on_the_battery_side(Constraint constraint);

// Demand over what can be had; 1 is the limit, 1000 the most that is reported.
using Utilised = units::Fraction<struct UtilisedMeaning>;

struct Utilisation {
    Constraint constraint{};
    units::Range<Utilised> used{};  // spans what its ends come to
};

// Up to here a use is comfortable: 0.90 of a source, [Welding-generator handbook]; of a motor's
// torque 1/1.2, common practice, no source.
[[nodiscard]] Utilised comfortable(Constraint constraint);

// What is on besides.
struct Background {
    units::Ends<units::Power> real{};  // through the inverter
    units::Ends<units::ReactivePower> reactive{};
    units::Ends<units::Power> direct{};  // at the bus
    units::ApparentPower plain_sum{};    // of the likely volt-amperes, added as they stand
};
[[nodiscard]] Background operator+(const Background& a, const Background& b);
[[nodiscard]] Background background_of(const RunningDraw& running, int items = 1);

// Everything asked for in the instant of the start, before the direct side is looked at.
struct StartDraw {
    units::Ends<units::ApparentPower> apparent{};
    units::Ends<units::Power> real{};
    units::ApparentPower plain_sum{};          // of volt-amperes, likely: a bound, not the demand
    units::Ends<units::Power> direct_power{};  // at the inverter's terminals, and at the bus
    units::Ends<units::Current> direct_current{};  // of 12 V motors, at the bus
    units::Ends<units::PowerFactor> factor{};      // of all together
    units::Ends<units::ApparentPower> surge{};     // what the inverter gives for an instant
    units::Ends<units::Duration> time{};           // of the slowest
    std::vector<Utilisation> used{};               // of what is not on the battery side
    bool surge_time_in_doubt = false;  // 1.5 times the rating and more, and nobody told how long
    bool waveform_in_doubt = false;
    bool through_inverter = true;  // false: 12 V motors alone, with the inverter off
};

struct Judgement {
    StartVerdict verdict = StartVerdict::marginal;
    Constraint binding = Constraint::surge_power;
    std::vector<Utilisation> used{};  // in the order of Constraint
    StartDraw draw{};
    units::Ends<units::Voltage> voltage{};       // at the inverter's terminals
    units::Ends<units::Voltage> bus{};           // where 12 V loads are
    units::Ends<units::Current> current{};       // of all packs
    units::Ends<units::Current> pack_current{};  // of the pack that is nearest to its limit
    units::Voltage emf{};
    bool collapses = false;  // at the high end no voltage gives the power asked for

    [[nodiscard]] const Utilisation* of(Constraint constraint) const;
};

// The motors switched on in one instant while the background runs.
//   takes    source, where the inverter sags with the bank; its draw then depends on it
[[nodiscard]] StartDraw draw_of(std::span<const StartingMotor> motors, const Background& background,
                                const InverterSide& inverter, const DirectSource& source);

// What the first motor sees at its terminals beside the background, at the likely end.
[[nodiscard]] motor::Source likely_source(const StartingMotor& motor, const Background& background,
                                          const InverterSide& inverter, const DirectSource& source);

// A 12 V motor straight on the bus, by its current while it starts.
[[nodiscard]] StartDraw draw_of(units::Ends<units::Current> starting, units::Duration time,
                                const Background& background, const InverterSide* inverter);

// The verdict of method.md (5).
//   holds for  unlike packs too
[[nodiscard]] Judgement judge(const StartDraw& draw, const InverterSide* inverter,
                              const DirectSource& source);

[[nodiscard]] Judgement judge_start(std::span<const StartingMotor> motors,
                                    const Background& background, const InverterSide& inverter,
                                    const DirectSource& source);

// The verdict of these uses alone.
[[nodiscard]] StartVerdict verdict_of(std::span<const Utilisation> used);

}  // namespace starting
