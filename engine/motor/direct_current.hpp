// Motors straight on the 12 V bus: winches by their pull, pumps by their rated current.
#pragma once

#include "motor/kind.hpp"
#include "units/quantities.hpp"
#include "units/range.hpp"
#include "units/result.hpp"

namespace motor {

inline constexpr units::Force newton = units::Force::from_value(1.0);
inline constexpr units::Force pound_force =
    units::Force::from_value(4.4482216152605);  // [NIST SP 811] B.8

// A winch by its sheet. Current grows straight with the pull, method.md (15).
struct Winch {
    units::Range<units::Current> no_load = units::spanning<units::Current>(
        60.0 * units::ampere, 70.0 * units::ampere, 75.0 * units::ampere);  // [Winch sheets]
    units::Current at_rated_pull{};
    units::Force rated_pull{};  // on the first layer of rope
};

// Current at a pull on a layer of rope, 1 the first; each further layer takes 10 % of the rated
// pull ([Winch sheets]), so the same pull takes more current.
//   fails   at "pull": above what the winch is rated for on that layer; at "layer": below 1 or
//           above 9
[[nodiscard]] units::Result<units::Range<units::Current>> current_at(const Winch& winch,
                                                                     units::Force pull, int layer);

// Rope stuck: 1.2 times the current at rated pull, common practice, no source.
[[nodiscard]] units::Current stalled_current(const Winch& winch);

// A direct-current motor at rest is a resistance, method.md (16). The brushes take about 1-2 V.
//   takes   resistances that are not both zero
//   gives   0 A where the brushes take all the voltage
[[nodiscard]] units::Current stalled_current(units::Voltage open_circuit, units::Voltage brushes,
                                             units::Resistance source, units::Resistance motor);

// Switching on a 12 V motor known by its rated current alone: 2, 4, 6 times that, common
// practice, no source. It falls as the motor turns, within 0.1 to 0.3 s.
[[nodiscard]] units::Range<units::Current> starting_current(units::Current rated);

}  // namespace motor
