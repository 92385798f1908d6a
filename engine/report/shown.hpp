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

// Times of a start are seconds, in hours they would be noise.
[[nodiscard]] inline Quantity shown_in_seconds(units::Duration time, int significant = 2) {
    return {.value = time / units::second, .unit = "s", .shown = in_words(time, significant)};
}

}  // namespace report
