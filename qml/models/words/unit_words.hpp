// A unit as a person meets it where it stands alone, to be picked: its sign for the eye, its word for
// the ear.
#pragma once

#include <QString>

namespace touch {

// "°C" for the "degC" of a file, "mΩ" for "mOhm"; others as they are. At the end of an
// amount such as "-8 degC" as well.
[[nodiscard]] QString with_signs_of_units(const QString& text);

// "percent" for "%", in the language of the screen; a unit that nothing here offers as it is.
[[nodiscard]] QString spoken_unit(const QString& unit);

}  // namespace touch
