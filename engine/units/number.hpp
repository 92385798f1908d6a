// Numbers as people write them.
#pragma once

#include <string>
#include <string_view>

#include "units/result.hpp"

namespace units {

struct LeadingNumber {
    double value = 0.0;     // finite
    std::string_view rest;  // what follows, without leading spaces
};

// The number at the start: "1.9", "1,9", ".5", "-4", "1e3", "1/2", "1 1/2".
//   fails   when there is none, when separators make it read two ways, when it is too large or
//           too small to hold; the remedy is empty where it depends on what was wanted
[[nodiscard]] Result<LeadingNumber> read_leading_number(std::string_view text);

// The finite number to so many significant digits, 1 to 17.
[[nodiscard]] double rounded_to(double number, int digits);

}  // namespace units
