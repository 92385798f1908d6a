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
    const auto& all_said = std::get<std::vector<words::Said>>(column->points);
    if (row >= all_said.size() || all_said[row].parts.size() != 1) return otherwise;
    const auto* number = std::get_if<words::Number>(&all_said[row].parts.front().held());
    return number ? number->value : otherwise;
}

QString words_in(const answers::Column& column, std::size_t row) {
    if (const auto* words = std::get_if<std::vector<words::Said>>(&column.points))
        return row < words->size() ? told((*words)[row]) : QString();
    return shown_amount(number_in(&column, row, 0.0), column.unit);
}

}  // namespace touch
