// Columns of an answer's tables by name.
#pragma once

#include <QString>

#include "report/answer.hpp"

namespace touch {

// Null where there is none, also where the answer is null.
[[nodiscard]] const report::Series* series_of(const report::Answer* answer, const QString& name);
[[nodiscard]] const report::Column* column_of(const report::Series* series, const QString& name);

[[nodiscard]] std::size_t length_of(const report::Column& column);
// Otherwise where there is no such column, row or number.
[[nodiscard]] double number_in(const report::Column* column, std::size_t row, double otherwise);
[[nodiscard]] QString words_in(const report::Column& column, std::size_t row);

}  // namespace touch
