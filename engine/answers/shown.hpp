// Quantities as an answer holds them: the value keeps every digit, only `shown` is rounded.
#pragma once

#include <algorithm>
#include <cmath>
#include <limits>
#include <string>
#include <type_traits>

#include "answers/answer.hpp"
#include "units/said.hpp"
#include "units/text.hpp"

namespace answers {

// Rounded for a sentence, as a part of it. Less than a twentieth of a watt-hour is nothing.
template <units::Written Written>
[[nodiscard]] words::Said in_words(Written quantity, int significant = 3) {
    if constexpr (std::is_same_v<Written, units::Energy>) {
        if (abs(quantity) < 0.05 * units::watt_hour) quantity = Written{};
    }
    // No meter of a person shows the thousandth of a volt of a battery.
    if constexpr (std::is_same_v<Written, units::Voltage>) {
        if (abs(quantity) < 10.0 * units::volt) significant = std::min(significant, 3);
    }
    return words::said<"{amount}">(units::amount(quantity, significant));
}

[[nodiscard]] inline Quantity not_known() {
    return {.value = std::numeric_limits<double>::quiet_NaN(), .unit = "1", .shown = words::said<"not known">()};
}

// A bare number, with so many digits behind the point.
[[nodiscard]] inline Quantity plain_number(double value, int decimals) {
    if (!std::isfinite(value)) return not_known();
    return {.value = value,
            .unit = "1",
            .shown = words::said<"{n}">(words::with_decimals(value, decimals))};
}

// A value that is not finite stays so, for quantity_or_reason to give the reason instead; the words
// are those of nothing known.
template <units::Written Written>
[[nodiscard]] Quantity shown(Written quantity, int significant = 3) {
    if (!std::isfinite(units::in_si(quantity))) return not_known();
    const units::Printed printed = units::in_customary_unit(quantity);
    return {.value = printed.value,
            .unit = std::string(printed.unit),
            .shown = in_words(quantity, significant)};
}

// Times of a start are seconds, in hours they would be noise.
[[nodiscard]] inline Quantity shown_in_seconds(units::Duration time, int significant = 2) {
    if (!std::isfinite(time.value())) return not_known();
    return {.value = time / units::second, .unit = "s", .shown = in_words(time, significant)};
}

}  // namespace answers
