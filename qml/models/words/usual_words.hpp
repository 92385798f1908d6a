// How the system's own settings suggest to say things, until the person says otherwise.
#pragma once

#include <QString>

namespace touch {

[[nodiscard]] QString usual_language();  // "en", "de": one there is a catalogue of
[[nodiscard]] QString usual_units();     // "metric", "us"
[[nodiscard]] QString usual_clock();     // "24", "12"

}  // namespace touch
