#include <algorithm>
#include <cmath>

#include "faces/paper.hpp"
#include "print/plots.hpp"

namespace printing {

namespace on_paper = faces::paper;

namespace {

constexpr Type letters{.size = plot_letters};
constexpr Type bold_letters{.size = plot_letters, .bold = true};
constexpr double bar_tall = 9.0;
constexpr double row_tall = 14.0;

struct Row {
    QString label;
    double low = 0.0;
    double likely = 0.0;
    double high = 0.0;
    QString words;
    bool strong = false;
};

// Dark up to the low end, grey to the likely one, an open box to the high one.
void add_row(Block& block, const Row& row, double left, double right, double top_value,
             double width) {
    const Type type = row.strong ? bold_letters : letters;
    const double y = block.height + (row_tall - bar_tall) / 2.0;
    const auto x = [&](double value) {
        return left + (right - left) * std::clamp(value / top_value, 0.0, 1.0);
    };
    const auto bar = [&](double from, double to, double grey) {
        block.sheet.shapes.append(
            {QPolygonF(QRectF(QPointF(x(from), y), QPointF(x(to), y + bar_tall))), grey});
    };
    bar(0.0, row.low, 0.0);
    bar(row.low, row.likely, 0.6);
    if (x(row.high) - x(row.likely) > 0.1)
        block.sheet.boxes.append(
            QRectF(QPointF(x(row.likely), y), QPointF(x(row.high), y + bar_tall)));
    const double line = block.height + (row_tall - line_height_of(type)) / 2.0;
    put(block, row.label, type, 0.0, left, line);
    put(block, row.words, type, right + 6.0, width, line);
    block.height += row_tall;
}

Block rows_plot(const QList<Row>& rows, double width, double at_least_up_to) {
    Block block;
    double label = 0.0;
    double words = 0.0;
    double top = at_least_up_to;
    for (const Row& row : rows) {
        label = std::max(label, width_of(row.label, row.strong ? bold_letters : letters));
        words = std::max(words, width_of(row.words, row.strong ? bold_letters : letters));
        top = std::max(top, row.high);
    }
    constexpr double least_bar = 90.0;  // pt; the bars give way to a long label, not it to them
    const double left = std::min(label, width - words - least_bar) + 6.0;
    const double right = std::max(left + 40.0, width - words - 6.0);
    if (!(top > 0.0)) top = 1.0;
    for (const Row& row : rows)
        add_row(block, row, left, right, top, width);
    if (at_least_up_to > 0.0) {
        const double x = left + (right - left) * at_least_up_to / top;
        block.sheet.strokes.append({{x, 0.0, x, block.height}, 1.2});
    }
    return block;
}

// The most of a curve, with its unit of choice.
words::Amount most(words::Dimension dimension, double si, std::string_view unit) {
    return {.dimension = dimension, .si = si, .unit = unit};
}

double highest(const std::vector<double>& values) {
    return values.empty() ? 0.0 : *std::ranges::max_element(values);
}

// Curves over one time, one below the other.
struct Courses {
    Block& block;
    const std::vector<double>& time;
    double width;
    const words::Language& language;

    void add(const std::vector<double>& values, const words::Said& name,
             const words::Amount& at_most) const {
        if (values.size() != time.size()) return;
        constexpr double tall = 60.0;
        const double lasts = time.back() > 0.0 ? time.back() : 1.0;
        const double high = highest(values);
        const double top = high > 0.0 ? high : 1.0;
        put(block, in_qt(language, name), letters, 0.0, width, block.height);
        put(block, in_qt(language, on_paper::at_most(at_most)), letters, 0.0, width, block.height,
            Align::right);
        block.height += line_height_of(letters);
        for (std::size_t point = 1; point < values.size(); ++point)
            block.sheet.strokes.append(
                {{width * time[point - 1] / lasts,
                  block.height + tall * (1.0 - values[point - 1] / top),
                  width * time[point] / lasts, block.height + tall * (1.0 - values[point] / top)},
                 1.4});
        block.height += tall;
        block.sheet.strokes.append({{0.0, block.height, width, block.height}, 0.5});
    }
};

}  // namespace

Block bars_plot(const answers::BarChart& chart, double width, const words::Language& language) {
    QList<Row> rows;
    for (const auto& bar : chart.bars)
        rows.append({in_qt(language, bar.label), bar.low, bar.likely, bar.high,
                     in_qt(language, bar.words), bar.chosen});
    Block block = rows_plot(rows, width, 0.0);
    add_lines(block, in_qt(language, on_paper::what_bars_mean()), letters, width);
    return block;
}

Block start_plot(const answers::StartChart& chart, double width, const words::Language& language) {
    QList<Row> rows;
    for (const auto& bar : chart.bars)
        rows.append({in_qt(language, bar.label), bar.low, bar.likely, bar.high,
                     in_qt(language, bar.shown), bar.binding});
    Block block = rows_plot(rows, width, 1.0);
    add_lines(block, in_qt(language, on_paper::what_shares_mean()), letters, width);
    return block;
}

Block course_plot(const answers::StartChart& chart, double width, const words::Language& language) {
    using words::Dimension;
    Block block;
    if (chart.time.size() < 2) return block;
    const Courses courses{block, chart.time, width, language};
    courses.add(chart.speed, words::said<"speed">(),
                most(Dimension::fraction, highest(chart.speed), "%"));
    courses.add(chart.current, words::said<"current of the motor">(),
                most(Dimension::current, highest(chart.current), "A"));
    courses.add(chart.direct_voltage, words::said<"voltage at the inverter">(),
                most(Dimension::voltage, highest(chart.direct_voltage), "V"));
    const auto seconds = [&](double time) {
        return in_qt(
            language,
            words::Amount{.dimension = Dimension::duration, .si = time, .digits = 2, .unit = "s"});
    };
    put(block, seconds(0.0), letters, 0.0, width, block.height);
    put(block, seconds(chart.time.back()), letters, 0.0, width, block.height, Align::right);
    block.height += line_height_of(letters);
    return block;
}

namespace {

void add_starts(QList<Plot>& plots, const answers::StartChart& chart, double width,
                const words::Language& language) {
    const QString load = in_qt(chart.name);
    plots.append({QStringLiteral("start of ") + load,
                  in_qt(language, words::said<"{load} {verdict}">(chart.name, chart.words)),
                  start_plot(chart, width, language)});
    if (chart.time.size() > 1)
        plots.append({QStringLiteral("course of ") + load,
                      in_qt(language, on_paper::how_it_comes_up(chart.name)),
                      course_plot(chart, width, language)});
}

}  // namespace

QList<Plot> plots_of(const answers::Answer& answer, double width, const words::Language& language) {
    QList<Plot> plots;
    if (answer.days && answer.days->at.size() > 1 && answer.days->lasts > 0.0)
        plots.append({QStringLiteral("days"), in_qt(language, words::said<"Stored in the packs">()),
                      days_plot(*answer.days, width, language)});
    for (const auto& chart : answer.bars)
        plots.append(
            {in_qt(chart.name), in_qt(language, chart.title), bars_plot(chart, width, language)});
    for (const auto& chart : answer.starts)
        add_starts(plots, chart, width, language);
    if (answer.builds)
        for (const auto& view : answer.builds->views)
            plots.append({QStringLiteral("builds by ") + in_qt(view.name),
                          in_qt(language, view.name == "price" ? on_paper::how_sure_by_price()
                                                               : on_paper::how_sure_by_weight()),
                          builds_plot(*answer.builds, view, width, language)});
    if (answer.wiring && !answer.wiring->boxes.empty())
        plots.append({QStringLiteral("wiring"), in_qt(language, on_paper::the_build()),
                      wiring_plot(*answer.wiring, language)});
    return plots;
}

}  // namespace printing
