#include <algorithm>
#include <cmath>

#include "print/plots.hpp"

namespace printing {

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
    const double left = std::min(label, 0.35 * width) + 6.0;
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

QString in_words(const std::string& text) {
    return QString::fromStdString(text);
}

}  // namespace

Block bars_plot(const answers::BarChart& chart, double width) {
    QList<Row> rows;
    for (const auto& bar : chart.bars)
        rows.append(
            {in_words(bar.label), bar.low, bar.likely, bar.high, in_words(bar.words), bar.chosen});
    Block block = rows_plot(rows, width, 0.0);
    add_lines(block, "Black at least, grey likely, open at best. Bold is what the file has.",
              letters, width);
    return block;
}

Block start_plot(const answers::StartChart& chart, double width) {
    QList<Row> rows;
    for (const auto& bar : chart.bars)
        rows.append(
            {in_words(bar.label), bar.low, bar.likely, bar.high, in_words(bar.shown), bar.binding});
    Block block = rows_plot(rows, width, 1.0);
    add_lines(
        block,
        "Share of each limit that is used: black at least, grey likely, open at most; the line is "
        "the limit. Bold is the nearest one.",
        letters, width);
    return block;
}

Block course_plot(const answers::StartChart& chart, double width) {
    Block block;
    if (chart.time.size() < 2) return block;
    constexpr double tall = 60.0;
    const double lasts = chart.time.back() > 0.0 ? chart.time.back() : 1.0;
    const auto curve = [&](const std::vector<double>& values, const QString& name,
                           const QString& unit, double scale) {
        if (values.size() != chart.time.size()) return;
        const double high = *std::max_element(values.begin(), values.end());
        const double top = high > 0.0 ? high : 1.0;
        put(block, name, letters, 0.0, width, block.height);
        put(block, QStringLiteral("%1 %2 at most").arg(QString::number(high * scale, 'g', 3), unit),
            letters, 0.0, width, block.height, Align::right);
        block.height += line_height_of(letters);
        for (std::size_t point = 1; point < values.size(); ++point)
            block.sheet.strokes.append({{width * chart.time[point - 1] / lasts,
                                         block.height + tall * (1.0 - values[point - 1] / top),
                                         width * chart.time[point] / lasts,
                                         block.height + tall * (1.0 - values[point] / top)},
                                        1.4});
        block.height += tall;
        block.sheet.strokes.append({{0.0, block.height, width, block.height}, 0.5});
    };
    curve(chart.speed, QStringLiteral("speed"), QStringLiteral("%"), 100.0);
    curve(chart.current, QStringLiteral("current of the motor"), QStringLiteral("A"), 1.0);
    curve(chart.direct_voltage, QStringLiteral("voltage at the inverter"), QStringLiteral("V"),
          1.0);
    put(block, QStringLiteral("0 s"), letters, 0.0, width, block.height);
    put(block, QStringLiteral("%1 s").arg(QString::number(lasts, 'g', 2)), letters, 0.0, width,
        block.height, Align::right);
    block.height += line_height_of(letters);
    return block;
}

QList<Plot> plots_of(const answers::Answer& answer, double width) {
    QList<Plot> plots;
    if (answer.days && answer.days->at.size() > 1 && answer.days->lasts > 0.0)
        plots.append({QStringLiteral("days"), QStringLiteral("Stored in the packs"),
                      days_plot(*answer.days, width)});
    for (const auto& chart : answer.bars)
        plots.append({in_words(chart.name), in_words(chart.title), bars_plot(chart, width)});
    for (const auto& chart : answer.starts) {
        plots.append({QStringLiteral("start of ") + in_words(chart.name),
                      in_words(chart.name + " " + chart.words), start_plot(chart, width)});
        if (chart.time.size() > 1)
            plots.append({QStringLiteral("course of ") + in_words(chart.name),
                          in_words("How " + chart.name + " comes up, most likely"),
                          course_plot(chart, width)});
    }
    if (answer.builds)
        for (const auto& view : answer.builds->views)
            plots.append({QStringLiteral("builds by ") + in_words(view.name),
                          in_words("How sure a build is against its " + view.name),
                          builds_plot(*answer.builds, view, width)});
    if (answer.wiring && !answer.wiring->boxes.empty())
        plots.append({QStringLiteral("wiring"), QStringLiteral("The build"),
                      wiring_plot(*answer.wiring, width)});
    return plots;
}

}  // namespace printing
