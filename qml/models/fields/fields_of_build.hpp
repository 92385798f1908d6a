// The fields of what needs more than the description of its keys: circuits, their parts, the place.
#pragma once

#include "models/fields/field_makers.hpp"

namespace touch {

[[nodiscard]] QList<Field> circuit_fields(const making::Table& circuit);
// Of one part of a circuit: which kind it is, its first key tells.
[[nodiscard]] QList<Field> link_fields(const making::Table& link);
[[nodiscard]] QList<Field> place_fields(const making::Table& place);

}  // namespace touch
