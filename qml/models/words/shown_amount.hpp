// Numbers of an answer's table as people read them, and the scale they are drawn on.
#pragma once

#include <string_view>

#include <QString>

#include "models/words/finding_text.hpp"
#include "models/words/told.hpp"
#include "units/said.hpp"

namespace touch {

template <class Quantity>
[[nodiscard]] QString shown(Quantity quantity) {
    return told(units::amount(quantity));
}

//   takes  a value in a unit as UCUM writes it: 1234 W.h is "1.23 kWh"
[[nodiscard]] QString shown_amount(double value, std::string_view unit, int significant = 3);
// A number of a table whose heading tells its unit; nothing where there is none.
[[nodiscard]] QString shown_number(double value);

// The rounded number that three or four steps of 1, 2 or 5 reach above `most`.
struct Scale {
    double step = 1.0;
    double top = 4.0;
};
[[nodiscard]] Scale scale_above(double most);

}  // namespace touch
