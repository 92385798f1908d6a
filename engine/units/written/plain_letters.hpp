// One way of writing for each thing that has several.
#pragma once

#include <string>
#include <string_view>

namespace units {

// The text with one way of writing for each thing: one plain space for every kind of space, "-" for
// every minus, "ohm", "u", "deg", "2" and "1/2" for Ω, µ, °, ² and ½; nothing at either end.
[[nodiscard]] std::string in_plain_letters(std::string_view text);

// The text without spaces at either end.
[[nodiscard]] std::string_view trimmed(std::string_view text);

}  // namespace units
