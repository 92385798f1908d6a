// Numbers of an answer's table as people read them, and the scale they are drawn on.
#pragma once

#include <string_view>

#include <QString>

#include "models/as_wished.hpp"
#include "models/finding_text.hpp"
#include "units/text.hpp"

namespace touch {

template <class Quantity>
[[nodiscard]] QString shown(Quantity quantity) {
    return told_amount(units::show(quantity));
}

//   takes  a value in a unit as UCUM writes it: 1234 W.h is "1.23 kWh"
[[nodiscard]] QString shown_amount(double value, std::string_view unit);

// The rounded number that three or four steps of 1, 2 or 5 reach above `most`.
struct Scale {
    double step = 1.0;
    double top = 4.0;
};
[[nodiscard]] Scale scale_above(double most);

}  // namespace touch
