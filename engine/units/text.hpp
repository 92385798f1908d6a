// Quantities as text: read what a person wrote, print what reads back the same, show what a
// person likes to see. Works for every alias of quantities.hpp. The locale does not matter.
#pragma once

#include <string>
#include <string_view>

#include "units/dimension.hpp"
#include "units/result.hpp"

namespace units {

// The bare forms behind the templates below; values are in SI.
[[nodiscard]] Result<double> read_si(Dimension wanted, std::string_view text);
[[nodiscard]] std::string print_si(Dimension dimension, double value);
[[nodiscard]] std::string print_si_in(Dimension dimension, double value, std::string_view unit);
[[nodiscard]] std::string show_si(Dimension dimension, double value, int significant);

// The remedy for whatever is not a quantity of this kind: "give charge, such as 100 Ah".
[[nodiscard]] words::Said what_to_give(Dimension wanted);

template <Written Quantity>
[[nodiscard]] words::Said what_to_give() {
    return what_to_give(DimensionOf<Quantity>::value);
}

// A number and a unit, such as "1.9 kWh", "1/2 hp", "-4 degC", "450 kWh/yr" for power,
// "4.5 kWh/m2/d" for a day's irradiation; "90 %" or "0.9" for a fraction; "120.50" for a price.
// Durations, lengths and masses may be sums: "2 d 6 h", "3 ft 6 in".
// A comma may stand for the decimal point; separators between thousands are not read.
// Capital letters count: mW is not MW.
//   fails   with an Error whose `where` is empty, for the caller to fill in: no number, no unit, an
//           unknown unit, a unit of another kind, a number that reads two ways or is too large,
//           a fraction outside 0 to 1, a temperature below absolute zero
//   source  unit factors: [NIST SP 811] app. B.8, in unit_table.cpp
template <Written Quantity>
[[nodiscard]] Result<Quantity> read(std::string_view text) {
    return read_si(DimensionOf<Quantity>::value, text).map([](double value) {
        return from_si<Quantity>(value);
    });
}

// Text in the unit customary in a file, with the fewest digits that read back to exactly this
// value: "100 Ah", "4 d", "25 degC". The value is finite.
template <Written Quantity>
[[nodiscard]] std::string print(Quantity quantity) {
    return print_si(DimensionOf<Quantity>::value, in_si(quantity));
}

// The same in a unit of choice, spelled as it would be read: print_in(area, "mm2"). Where no number
// of that unit is exactly this value, the SI unit takes its place.
template <Written Quantity>
[[nodiscard]] std::string print_in(Quantity quantity, std::string_view unit) {
    return print_si_in(DimensionOf<Quantity>::value, in_si(quantity), unit);
}

// Rounded text for people: "1.9 kWh", "26.8 h", "3 d 4 h", "−4 °C", "90 %". The value is finite.
//   significant   digits kept, 1 to 15; temperatures have one decimal at most, prices none or two
template <Written Quantity>
[[nodiscard]] std::string show(Quantity quantity, int significant = 3) {
    return show_si(DimensionOf<Quantity>::value, in_si(quantity), significant);
}

// A quantity for a program to read: a number and its unit as [UCUM] writes it.
struct Printed {
    double value = 0.0;
    std::string_view unit;

    friend bool operator==(const Printed&, const Printed&) = default;
};

[[nodiscard]] Printed customary_si(Dimension dimension, double value);

// Always the same unit for one kind of quantity: W, V.A, W.h, A.h, V, A, Ohm, Cel, K, h, m, m2, L,
// kg, deg, W/m2, W.h/m2, Hz, rad/s, N.m, kg.m2, N, % for fractions, 1 for power factors and prices.
// [UCUM] has no unit of reactive power; var stands for it.
template <Written Quantity>
[[nodiscard]] Printed in_customary_unit(Quantity quantity) {
    return customary_si(DimensionOf<Quantity>::value, in_si(quantity));
}

}  // namespace units
