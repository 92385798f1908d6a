// The units Candlemark knows, in one table.
#pragma once

#include <array>
#include <optional>
#include <span>
#include <string>
#include <string_view>
#include <vector>

#include "units/dimension.hpp"
#include "words/said.hpp"

namespace units {

// One accepted spelling. SI value = (number + offset) * numerator / denominator + shift.
struct NamedUnit {
    std::string_view spelling;
    Dimension dimension;
    double numerator = 1.0;
    double denominator = 1.0;
    double offset = 0.0;  // of a point on a temperature scale only
    double shift = 0.0;   // likewise
};

// How a kind of quantity is called and in which units it is written.
struct DimensionText {
    Dimension dimension;
    std::string_view example;  // "100 Ah"
    std::string_view si;       // spelling of the SI unit, "C"
    std::array<std::string_view, 4>
        customary;  // spellings for files, the preferred first; rest empty
    std::string_view ucum;
    std::string_view ucum_spelling;  // the same unit as spelled in the table
};

[[nodiscard]] const DimensionText& text_of(Dimension dimension);

// "charge", "a temperature difference"
[[nodiscard]] const words::Said& kind_in_words(Dimension dimension);

[[nodiscard]] std::span<const NamedUnit> unit_table();

// The kind of quantity whose units a wanted kind is written in: % serves every fraction.
[[nodiscard]] Dimension written_as(Dimension wanted);

// The unit of that spelling: of the wanted kind, else of any kind, else null.
[[nodiscard]] const NamedUnit* find_unit(Dimension wanted, std::string_view spelling);

// The SI value of so many of the unit, and the reverse (rounded). A difference has no offset.
[[nodiscard]] double to_si(const NamedUnit& unit, double number, Dimension wanted);
[[nodiscard]] double number_of(const NamedUnit& unit, double value, Dimension wanted);

// Units that a misspelt one may have meant, the likeliest first, at most three: first those that
// differ in capitals only, else those a letter or two away. Units of the wanted kind go first.
[[nodiscard]] std::vector<std::string_view> similar_units(Dimension wanted,
                                                          std::string_view misspelt);

}  // namespace units
