// What the engine says, put into the language, the units and the clock of the screen. Nothing that
// is finished is looked at again.
#pragma once

#include <QString>

#include "words/amount.hpp"
#include "words/language.hpp"

namespace touch {

// The language of the screen, with the clock and the units that the person wishes.
[[nodiscard]] words::Language language_wished();
void set_language_wished(const words::Language& language);  // safe while others are told something

// What its catalogue lacks is said in English.
[[nodiscard]] QString told(const words::Said& said);
// A quantity or a number alone.
[[nodiscard]] QString told(const words::Amount& amount);
[[nodiscard]] QString told(const words::Number& number);

}  // namespace touch
