// Where a unit ends, and its spelling in the table. Takes text in plain letters.
#pragma once

#include <cstddef>
#include <string>
#include <string_view>

namespace units {

// A unit ends where a space and the next number of a sum begin; the 1 of "1/h" is no number.
[[nodiscard]] std::size_t unit_length(std::string_view text);

// "N·m", "N*m", "N.m", "N-m" are "N m"; "m^2" is "m2"; "/h" is "1/h"; "kWh/(m2 d)" is "kWh/m2/d".
[[nodiscard]] std::string plain_unit(std::string_view written);

}  // namespace units
