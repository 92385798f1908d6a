// The direct-current side at one instant: packs of any kinds on one bus, the cable to the inverter,
// and what each of them carries for how long. See method.md, "Direct side".
#pragma once

#include <optional>
#include <string>
#include <vector>

#include "scenario/assumption.hpp"
#include "scenario/pack.hpp"
#include "starting/ends.hpp"
#include "unit/built.hpp"
#include "units/quantities.hpp"
#include "units/range.hpp"
#include "units/result.hpp"

namespace starting {

// What a pack's own protection lets through, by time.
struct TimedLimits {
    std::optional<units::Current> continuous{};
    std::vector<scenario::PulseLimit> pulse{};  // in any order
};

// The largest current held for this long; absent where nothing limits it. Low is what is sure,
// high what may be: where a pack states no pulse, [BMS boards] trip at 2 to 3 times the rating
// after 0.5 to 1.5 s.
[[nodiscard]] units::Ends<std::optional<units::Current>> allowed_for(const TimedLimits& limits,
                                                                     units::Duration time);

// Packs alike in everything, in parallel. All values are of one pack.
struct Branch {
    std::string name{};
    units::Voltage emf{};                    // rested, at its charge and temperature
    units::Range<units::Resistance> path{};  // cells, leads, connector, fuse; low is the least
    int count = 1;
    TimedLimits limits{};
    std::optional<units::Current> fuse{};
    std::optional<units::Current> contact{};  // the weakest connector or switch of its lead
};

// How much more than the mean one of several like packs carries.
using Imbalance = units::Fraction<struct ImbalanceMeaning>;

// 1.15 for branches wired by hand, which lie between 1.0 and 1.3: common practice, no source.
inline constexpr Imbalance usual_imbalance{1.15};
inline constexpr Imbalance largest_imbalance{1.30};

struct DirectSource {
    std::vector<Branch> branches{};
    units::Resistance shared{};             // from the bus to where power is taken, both conductors
    Imbalance imbalance = usual_imbalance;  // counts where there is more than one pack
    std::optional<units::Current> main_fuse{};     // on the way to the inverter
    std::optional<units::Current> main_contact{};  // the weakest connector or switch there
};

[[nodiscard]] int packs_of(const DirectSource& source);

// All branches as one, at one end of their resistances; method.md (2).
struct Equivalent {
    units::Voltage emf{};
    units::Resistance branches{};  // of all in parallel
    units::Resistance shared{};
};
[[nodiscard]] Equivalent equivalent(const DirectSource& source, End end);

// Where a constant power settles, method.md (3).
//   possible   false when no voltage gives this power: then it is the point of the largest power
struct DirectPoint {
    units::Voltage voltage{};  // where power is taken
    units::Voltage bus{};
    units::Current current{};
    bool possible = true;
    units::Power at_most{};  // 0 where nothing limits it
};
[[nodiscard]] DirectPoint at_power(const Equivalent& source, units::Power power);

// The same beside a constant current, taken at the bus.
[[nodiscard]] DirectPoint at_power_and_current(const Equivalent& source, units::Power power,
                                               units::Current current);

// Of one pack of the branch, with the bus at this voltage; positive out of the pack.
[[nodiscard]] units::Current of_one_pack(const DirectSource& source, const Branch& branch, End end,
                                         units::Voltage bus);

// The bank of the built unit, with the main path where it has an inverter.
//   fails    unlike chemistries on one bus; no pack at all
struct Bank {
    DirectSource source{};
    scenario::Assumptions assumptions{};
    units::Voltage nominal{};
    units::StateOfCharge charge{};  // of all packs together
};
//   takes    charge, instead of what the packs state
[[nodiscard]] units::Result<Bank> bank_of(const unit::Unit& built,
                                          std::optional<units::StateOfCharge> charge = {});

}  // namespace starting
