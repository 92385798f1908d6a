#include "print/saved_plot.hpp"

#include <algorithm>
#include <initializer_list>
#include <string_view>
#include <utility>

#include "answers/packs/builds_chart.hpp"
#include "command_line/questions.hpp"
#include "faces/csv.hpp"
#include "faces/paper.hpp"
#include "print/plots.hpp"
#include "print/print_file.hpp"
#include "print/sheet_svg.hpp"

namespace printing {

namespace on_paper = faces::paper;

namespace {

using answers::Answer;
using answers::Column;
using answers::Series;

constexpr double plot_width = 560.0;  // points, about a page wide
constexpr double edge = 12.0;

Column numbers(std::string name, words::Said heading, const std::string& unit,
               std::vector<double> points) {
    return {.name = std::move(name),
            .heading = std::move(heading),
            .unit = unit,
            .points = std::move(points)};
}

// Bars as a table: what each is called, at least, likely, at best.
template <class Bars>
Series table_of(const Bars& bars, const std::string& unit, double factor) {
    std::vector<words::Said> labels;
    std::vector<double> low;
    std::vector<double> likely;
    std::vector<double> high;
    for (const auto& bar : bars) {
        labels.push_back(bar.label);
        low.push_back(factor * bar.low);
        likely.push_back(factor * bar.likely);
        high.push_back(factor * bar.high);
    }
    return {
        .name = "bars",
        .title = {},
        .columns = {
            {.name = "what", .heading = on_paper::what(), .unit = {}, .points = std::move(labels)},
            numbers("low", on_paper::low(), unit, std::move(low)),
            numbers("likely", on_paper::likely(), unit, std::move(likely)),
            numbers("high", on_paper::high(), unit, std::move(high))}};
}

const Series* series_named(const Answer& answer, std::string_view name) {
    const auto found = std::ranges::find(answer.series, name, &Series::name);
    return found == answer.series.end() ? nullptr : &*found;
}

// The numbers that a plot of that name is drawn from.
const Series* drawn_from(const Answer& answer, const QString& plot, Series& made) {
    const std::string name = plot.toStdString();
    for (const auto& chart : answer.bars)
        if (chart.name == name) return &(made = table_of(chart.bars, chart.unit, 1.0));
    for (const auto& chart : answer.starts)
        if ("start of " + chart.name == name) {
            return &(made = table_of(chart.bars, "%", 100.0));
        }
    if (answer.builds)
        for (const auto& view : answer.builds->views)
            if ("builds by " + view.name == name)
                return &(made = answers::builds_table(*answer.builds, view));
    if (const Series* own = series_named(answer, name)) return own;
    return answer.series.empty() ? nullptr : &answer.series.front();
}

Sheet drawing_of(const Plot& plot) {
    Sheet sheet = plot.block.sheet;
    move(sheet, edge, edge);
    double wide = plot_width;
    for (const Words& each : sheet.words)
        wide = std::max(wide, each.box.right() - edge);
    for (const Stroke& each : sheet.strokes)
        wide = std::max({wide, each.line.x1() - edge, each.line.x2() - edge});
    sheet.size = {wide + 2.0 * edge, plot.block.height + 2.0 * edge};
    return sheet;
}

QList<SavedPlot> plots_of_questions(const scenario::ReadScenario& read,
                                    std::initializer_list<std::string_view> names,
                                    const words::Language& language) {
    QList<SavedPlot> saved;
    for (const auto& question : command_line::questions()) {
        if (std::ranges::find(names, question.name) == names.end()) continue;
        command_line::Request request;
        request.question = &question;
        const auto answer = command_line::answer_to(read, request);
        if (!answer) continue;
        for (const Plot& plot : plots_of(*answer, plot_width, language)) {
            Series made;
            Answer table{.question = answer->question};
            if (const Series* series = drawn_from(*answer, plot.name, made))
                table.series = {*series};
            saved.append({QString::fromLatin1(question.name) + QLatin1Char(' ') + plot.name,
                          plot.title, drawing_of(plot),
                          QByteArray::fromStdString(faces::in_csv(table, language))});
        }
    }
    return saved;
}

}  // namespace

QList<SavedPlot> plots_to_save(const scenario::ReadScenario& read,
                               const words::Language& language) {
    return plots_of_questions(read, {"outage", "sun", "start", "wiring"}, language);
}

QList<SavedPlot> builds_to_save(const scenario::ReadScenario& read,
                                const words::Language& language) {
    return plots_of_questions(read, {"packs"}, language);
}

scenario::Saving write_plot(const SavedPlot& plot, const QString& path) {
    return write_file(path.endsWith(QStringLiteral(".csv"), Qt::CaseInsensitive)
                          ? plot.numbers
                          : in_svg(plot.drawing, plot.title),
                      path);
}

}  // namespace printing
