// Quantities and times as parts of what is said.
#pragma once

#include <cmath>

#include "units/dimension.hpp"
#include "units/time.hpp"
#include "words/said.hpp"

namespace units {

// Rounded to so many significant digits when it is shown; the value is finite.
template <Written Quantity>
[[nodiscard]] words::Amount amount(Quantity quantity, int digits = 3) {
    return {.dimension = DimensionOf<Quantity>::value, .si = in_si(quantity), .digits = digits};
}

// In a unit of choice, as it is shown, with so many digits behind the point: 13.20 V.
template <Written Quantity>
[[nodiscard]] words::Amount amount_in(Quantity quantity, std::string_view unit, int decimals) {
    return {.dimension = DimensionOf<Quantity>::value,
            .si = in_si(quantity),
            .unit = unit,
            .decimals = decimals};
}

// To the degree: "15 °C" for 14.6 °C.
[[nodiscard]] inline words::Amount to_the_degree(Temperature temperature) {
    return amount(celsius(std::round(in_celsius(temperature))));
}

// Both ends in one unit; low is not above high.
template <Written Quantity>
[[nodiscard]] words::Between between(Quantity low, Quantity high, int digits = 3) {
    return {.dimension = DimensionOf<Quantity>::value,
            .low = in_si(low),
            .high = in_si(high),
            .digits = digits};
}

[[nodiscard]] inline words::Moment moment(
    LocalTime time, words::Moment::Form form = words::Moment::Form::weekday_and_clock) {
    return {.since_1970 = time.since_1970() / second, .form = form};
}

}  // namespace units

template <units::Written Quantity>
struct words::AsPart<Quantity> {
    static Part of(Quantity quantity) { return units::amount(quantity); }
};

template <>
struct words::AsPart<units::LocalTime> {
    static Part of(units::LocalTime time) { return units::moment(time); }
};
