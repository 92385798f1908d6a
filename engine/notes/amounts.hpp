// Amounts with their units in a person's line.
#pragma once

#include <optional>
#include <string>

#include "notes/words.hpp"
#include "scenario/log.hpp"
#include "units/quantities.hpp"
#include "units/result.hpp"

namespace notes {

// What stands in the line; each at most once. Two of a kind are refused by name.
struct Amounts {
    std::optional<scenario::VoltageShown> voltage;
    std::optional<units::Power> power;
    std::optional<units::Current> current;
    std::optional<units::Energy> energy;
    std::optional<units::StateOfCharge> charge;
    std::optional<units::Temperature> temperature;
    std::optional<units::Duration> duration;
    std::optional<int> count;  // a whole number without a unit
};

//   fails   at "line" with each amount that cannot be, and each kind that stands twice
[[nodiscard]] units::Result<Amounts> take_amounts(Words& words);

}  // namespace notes
