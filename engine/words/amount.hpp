// Quantities, numbers and times as people read them.
#pragma once

#include <string>

#include "words/language.hpp"

namespace words {

[[nodiscard]] std::string in(const Language& language, const Between& between);
[[nodiscard]] std::string in(const Language& language, const Count& count);
[[nodiscard]] std::string in(const Language& language, const Number& number);

// The finite number to so many significant digits, 1 to 17.
[[nodiscard]] double rounded_to(double number, int digits);

// "one" … "twelve", then digits.
[[nodiscard]] std::string number_in_words(const Language& language, std::int64_t number);

}  // namespace words
