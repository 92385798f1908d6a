// The fields of what a unit is built of and stands in: circuits and their parts, charge
// controller, chargers, case, place and goal.
#pragma once

#include "models/field_makers.hpp"

namespace touch {

[[nodiscard]] QList<Field> circuit_fields(const making::Table& circuit);
// Of one part of a circuit: which kind it is, its first key tells.
[[nodiscard]] QList<Field> link_fields(const making::Table& link);
[[nodiscard]] QList<Field> controller_fields(const making::Table& controller);
[[nodiscard]] QList<Field> charger_fields(const making::Table& charger);
[[nodiscard]] QList<Field> case_fields(const making::Table& enclosure);
[[nodiscard]] QList<Field> place_fields(const making::Table& place);
[[nodiscard]] QList<Field> goal_fields(const making::Table& goal);
[[nodiscard]] QList<Field> motor_fields(const making::Table& load);

}  // namespace touch
