// Amounts as a person types them. A file has a decimal point; who writes a comma types and reads
// one.
#pragma once

#include <QString>

#include "units/dimension.hpp"

namespace touch {

// The decimal mark of the screen's language: "." or ",".
[[nodiscard]] QString decimal_mark();

// An amount of a file as it is read on the screen: "1.5 W" is "1,5 W" in German.
[[nodiscard]] QString with_own_mark(const QString& amount);
// What was typed as the file has it: "1,5 W" is "1.5 W" where the comma is the language's own mark.
[[nodiscard]] QString for_the_file(const QString& typed);

// An amount of a file as a field shows it: with its own number and unit, and where the person
// wishes for them the units of the United States beside the metric ones: "5 °C (41 °F)".
[[nodiscard]] QString amount_in_field(const QString& amount, units::Dimension dimension);

}  // namespace touch
