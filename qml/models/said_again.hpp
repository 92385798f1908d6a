// What the engine says in English, said again in the language of the screen where that is known:
// the answer to the outage, times and lengths, the words that come again and again. What is not
// known stays as the engine said it.
#pragma once

#include <QString>

namespace touch {

[[nodiscard]] QString said_again(const QString& english);
// Whether the screen speaks a language other than the engine's.
[[nodiscard]] bool speaks_another_language();
void speak_another_language(bool other);

}  // namespace touch
