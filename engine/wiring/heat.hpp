// Heat that stays in the case, and the hydrogen that lead-acid packs give off.
#pragma once

#include <optional>

#include "scenario/pack.hpp"
#include "units/quantities.hpp"
#include "wiring/quantities.hpp"

namespace wiring {

// From what a shut case loses through its walls, W/(m2 K): plastic 3.5, painted steel 5.5.
//   source  [Enclosure sheets]; plastic from memory, on the cautious side of them
[[nodiscard]] HeatTransfer heat_transfer_of(bool steel);

// What an inverter turns into heat at this output.
[[nodiscard]] units::Power loss_of(units::Power output, units::Efficiency efficiency);

// How much warmer it becomes inside a shut case that sheds `loss`; method.md (12).
[[nodiscard]] units::TemperatureDifference rise_in_case(units::Power loss, units::Area surface,
                                                        HeatTransfer transfer);

// The loss that a shut case sheds within a rise.
[[nodiscard]] units::Power shed_within(units::TemperatureDifference rise, units::Area surface,
                                       HeatTransfer transfer);

// The air a fan must move to carry a loss away within a rise; method.md (13).
[[nodiscard]] VolumeFlow air_for(units::Power loss, units::TemperatureDifference rise);

struct HydrogenVent {
    VolumeFlow air;                  // that must pass
    units::Area opening{};           // of each of inlet and outlet
    double milliamperes_per_ah = 0;  // gassing current taken
};

// Ventilation a lead-acid pack needs while it charges at its boost voltage; method.md (14).
//   gives   nothing for chemistries without gassing
//   source  [IEC 62485-2] as restated
[[nodiscard]] std::optional<HydrogenVent> hydrogen_vent(scenario::Chemistry chemistry, int cells,
                                                        units::Charge capacity);

}  // namespace wiring
