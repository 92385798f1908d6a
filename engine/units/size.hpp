// The size of a conductor, in the system its seller uses; the two are never mixed up.
#pragma once

#include <concepts>
#include <string>
#include <string_view>
#include <variant>

#include "units/quantities.hpp"
#include "units/result.hpp"

namespace units {

// American wire gauge: 40 (thin) down to 0, which is 1/0, then -1 for 2/0, -2 for 3/0, -3 for 4/0.
struct AmericanGauge {
    int number = 0;

    friend constexpr bool operator==(AmericanGauge, AmericanGauge) = default;
};

inline constexpr AmericanGauge thinnest_gauge = AmericanGauge{40};
inline constexpr AmericanGauge thickest_gauge = AmericanGauge{-3};

// A gauge, or the nominal metal cross-section, positive.
using WireSize = std::variant<AmericanGauge, Area>;

// "12 AWG", "4/0 AWG", "2.5 mm2", or m2 for that matter.
//   fails   with an empty `where`; sizes in other units of area are refused
[[nodiscard]] Result<WireSize> read_wire_size(std::string_view text);

// Text that reads back to the same size.
[[nodiscard]] std::string print(const WireSize& size);

// For people: "12 AWG", "4/0 AWG", "2.5 mm²".
[[nodiscard]] std::string show(const WireSize& size);

template <std::same_as<WireSize> Size>
[[nodiscard]] Result<Size> read(std::string_view text) {
    return read_wire_size(text);
}

}  // namespace units
