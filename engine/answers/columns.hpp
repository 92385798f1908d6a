// Columns of tables, filled from quantities.
#pragma once

#include <string>
#include <type_traits>
#include <utility>
#include <vector>

#include "answers/answer.hpp"
#include "units/text.hpp"

namespace answers {

// In the unit customary for its kind.
template <class Written>
[[nodiscard]] double number(Written quantity) {
    return units::in_customary_unit(quantity).value;
}

// A column filled by a function of the row; numbers and their unit come from the quantity itself.
template <class Function>
[[nodiscard]] Column column(std::string name, words::Said heading, std::size_t rows,
                            Function of_row) {
    using Entry = decltype(of_row(std::size_t{}));
    Column result{.name = std::move(name), .heading = std::move(heading), .unit = {}, .points = {}};
    if constexpr (std::is_convertible_v<Entry, words::Said>) {
        std::vector<words::Said> words;
        for (std::size_t row = 0; row < rows; ++row) {
            words.push_back(of_row(row));
        }
        result.points = std::move(words);
    } else if constexpr (std::is_same_v<Entry, Code>) {
        std::vector<Code> codes;
        for (std::size_t row = 0; row < rows; ++row)
            codes.push_back(of_row(row));
        result.points = std::move(codes);
    } else {
        std::vector<double> numbers;
        for (std::size_t row = 0; row < rows; ++row) {
            if constexpr (std::is_arithmetic_v<Entry>) {
                numbers.push_back(static_cast<double>(of_row(row)));
            } else {
                numbers.push_back(number(of_row(row)));
            }
        }
        if constexpr (std::is_arithmetic_v<Entry>) {
            result.unit = "1";
        } else {
            result.unit = std::string(units::in_customary_unit(Entry{}).unit);
        }
        result.points = std::move(numbers);
    }
    return result;
}

}  // namespace answers
