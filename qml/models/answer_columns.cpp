#include "models/answer_columns.hpp"

#include <algorithm>

#include "models/words/shown_amount.hpp"

namespace touch {

const answers::Series* series_of(const answers::Answer* answer, const QString& name) {
    if (!answer) return nullptr;
    const auto found =
        std::ranges::find(answer->series, name.toStdString(), &answers::Series::name);
    return found == answer->series.end() ? nullptr : &*found;
}

const answers::Column* column_of(const answers::Series* series, const QString& name) {
    if (!series) return nullptr;
    const auto found =
        std::ranges::find(series->columns, name.toStdString(), &answers::Column::name);
    return found == series->columns.end() ? nullptr : &*found;
}

std::size_t length_of(const answers::Column& column) {
    return std::visit([](const auto& points) { return points.size(); }, column.points);
}

double number_in(const answers::Column* column, std::size_t row, double otherwise) {
    if (!column) return otherwise;
    if (const auto* numbers = std::get_if<std::vector<double>>(&column->points))
        return row < numbers->size() ? (*numbers)[row] : otherwise;
    const words::Said* said_one = answers::words_at(*column, row);
    if (said_one == nullptr || said_one->parts.size() != 1) return otherwise;
    const auto* number = std::get_if<words::Number>(&said_one->parts.front().held());
    return number ? number->value : otherwise;
}

QString words_in(const answers::Column& column, std::size_t row) {
    if (const words::Said* said_one = answers::words_at(column, row)) return told(*said_one);
    if (!std::holds_alternative<std::vector<double>>(column.points)) return {};
    return shown_amount(number_in(&column, row, 0.0), column.unit);
}

}  // namespace touch
