// Columns of an answer's tables by name.
#pragma once

#include <QString>

#include "answers/answer.hpp"

namespace touch {

// Null where there is none, also where the answer is null.
[[nodiscard]] const answers::Series* series_of(const answers::Answer* answer, const QString& name);
[[nodiscard]] const answers::Column* column_of(const answers::Series* series, const QString& name);

[[nodiscard]] std::size_t length_of(const answers::Column& column);
// Also of what is said with one number and nothing else. Otherwise where there is no such column,
// row or number.
[[nodiscard]] double number_in(const answers::Column* column, std::size_t row, double otherwise);
[[nodiscard]] QString words_in(const answers::Column& column, std::size_t row);

}  // namespace touch
