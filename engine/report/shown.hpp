// Quantities as an answer holds them: the value keeps every digit, only `shown` is rounded.
#pragma once

#include <string>
#include <type_traits>

#include "report/answer.hpp"
#include "units/text.hpp"

namespace report {

// Rounded for a sentence. Less than a twentieth of a watt-hour is nothing.
template <units::Written Written>
[[nodiscard]] std::string in_words(Written quantity, int significant = 3) {
    if constexpr (std::is_same_v<Written, units::Energy>) {
        if (abs(quantity) < 0.05 * units::watt_hour) {
            return "0 Wh";
        }
    }
    return units::show(quantity, significant);
}

template <units::Written Written>
[[nodiscard]] Quantity shown(Written quantity, int significant = 3) {
    const units::Printed printed = units::in_customary_unit(quantity);
    return {.value = printed.value,
            .unit = std::string(printed.unit),
            .shown = in_words(quantity, significant)};
}

}  // namespace report
