// How many packs make it start, and how low the bank may stand.
#pragma once

#include <functional>
#include <optional>
#include <string>

#include "scenario/keys/most.hpp"
#include "starting/start.hpp"

namespace starting {

// The judgement of one question behind any source.
using JudgeBehind = std::function<Judgement(const DirectSource&)>;

struct PacksNeeded {
    std::optional<int> surely{};   // all together; absent: no number of packs makes it sure
    std::optional<int> perhaps{};  // the fewest with which it may start
    Constraint because{};          // what stands in the way of any number, where `surely` is absent
    StartVerdict at_best = StartVerdict::starts;  // with any number of packs
};

// Varies the packs of the last branch; the others stay. More packs never make it worse.
[[nodiscard]] PacksNeeded packs_needed(const DirectSource& source, const JudgeBehind& judge);

inline constexpr int most_packs_tried = scenario::most_packs;

// The same source with this many packs in its last branch.
[[nodiscard]] DirectSource with_last(DirectSource source, int count);

// Every branch at this rested voltage.
[[nodiscard]] DirectSource standing_at(DirectSource source, units::Voltage emf);

// The lowest rested voltage at which the verdict is no worse than this, to a millivolt; absent
// where it is worse at `highest`.
//   takes    lowest below highest
[[nodiscard]] std::optional<units::Voltage> lowest_voltage_for(
    StartVerdict verdict, const std::function<StartVerdict(units::Voltage)>& verdict_at,
    units::Voltage lowest, units::Voltage highest);

}  // namespace starting
