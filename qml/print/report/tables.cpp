#include "print/report/tables.hpp"

#include <algorithm>

#include "faces/page.hpp"
#include "faces/paper.hpp"

namespace printing {

namespace on_paper = faces::paper;

namespace {

using answers::Series;

constexpr std::size_t most_at_once = 4;  // rows; longer tables stand behind the report
constexpr std::size_t most_rows = 60;  // longer tables are for --as csv

QString cell_of(const Report& report, const answers::Column& column, std::size_t row) {
    if (const words::Said* said_one = answers::words_at(column, row))
        return report.in_words(*said_one);
    return in_qt(
        faces::number_shown(std::get<std::vector<double>>(column.points)[row], report.language));
}

std::size_t rows_of(const Series& series) {
    return series.columns.empty() ? 0
                                  : std::visit([](const auto& points) { return points.size(); },
                                               series.columns.front().points);
}

QString heading_of(const Report& report, const answers::Column& column) {
    const std::string unit = faces::unit_shown(column.unit);
    const QString words = report.in_words(column.heading);
    return unit.empty() ? words : QStringLiteral("%1 [%2]").arg(words, in_qt(unit));
}

}  // namespace

bool is_told(const Series& series) {
    return series.brief || series.name == "loads" || series.name == "links";
}

bool stands_behind(const Series& series) {
    return rows_of(series) > most_at_once;
}

void add_series(Report& report, const Series& series) {
    QStringList headings;
    for (const auto& column : series.columns)
        headings << heading_of(report, column);
    QList<QStringList> rows;
    const std::size_t all = rows_of(series);
    for (std::size_t row = 0; row < std::min(all, most_rows); ++row) {
        QStringList cells;
        for (const auto& column : series.columns)
            cells << cell_of(report, column, row);
        rows << cells;
    }
    if (rows.isEmpty()) return;
    report.add(series.title, in_report::heading, 8.0, 0.0, 40.0);
    report.flow.add(headings, rows, in_report::table);
    if (all > most_rows) report.add(on_paper::rows_left_out(all - most_rows), in_report::table);
}

}  // namespace printing
