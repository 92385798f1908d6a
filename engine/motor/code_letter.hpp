// The locked-rotor code letter of a motor's plate.
#pragma once

#include <optional>
#include <string_view>

#include "units/quantities.hpp"
#include "units/range.hpp"
#include "units/result.hpp"

namespace motor {

inline constexpr units::Power horsepower =
    units::Power::from_value(745.69987158227022);  // 550 ft lbf/s, [NIST SP 811] B.8

// Apparent power at locked rotor, full voltage. The bands are half open: a letter reaches up to,
// but not including, the lower end of the next one; the printed tables leave gaps of 0.01 kVA/hp.
//   likely  the middle of the band
//   fails   at an empty `where`: letters I, O and Q, which are not used; V, whose band has no upper
//           end; anything that is not one letter
//   source  [NEC] Table 430.7(B)
[[nodiscard]] units::Result<units::Range<units::ApparentPower>> locked_rotor_power(
    std::string_view letter, units::Power rated_output);

// The letter whose band holds this demand; V from 22.4 kVA/hp up. demand and output are positive.
[[nodiscard]] char code_letter_of(units::ApparentPower locked_rotor, units::Power rated_output);

}  // namespace motor
