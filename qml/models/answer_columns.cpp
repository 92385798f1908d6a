#include "models/answer_columns.hpp"

#include <algorithm>

#include "models/finding_text.hpp"
#include "models/shown_amount.hpp"

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
    const auto* numbers = std::get_if<std::vector<double>>(&column->points);
    return numbers && row < numbers->size() ? (*numbers)[row] : otherwise;
}

QString words_in(const answers::Column& column, std::size_t row) {
    if (const auto* words = std::get_if<std::vector<std::string>>(&column.points))
        return row < words->size() ? words_of((*words)[row]) : QString();
    return shown_amount(number_in(&column, row, 0.0), column.unit);
}

}  // namespace touch
