#include <algorithm>
#include <cmath>

#include "answers/clock_words.hpp"
#include "faces/paper.hpp"
#include "print/plots.hpp"
#include "units/said.hpp"

namespace printing {

namespace {

using answers::DaysChart;

constexpr Type letters{.size = plot_letters};
constexpr double left = 46.0;  // for the figures of the scale
constexpr double tall = 170.0;
constexpr double room_above = 14.0;  // for the letters of events
constexpr double flows_tall = 44.0;
constexpr double night_grey = 0.93;
constexpr double band_grey = 0.75;
constexpr double sun_grey = 0.6;

struct Frame {
    const DaysChart& chart;
    double width = 0.0;

    [[nodiscard]] double x(double hours) const {
        return left + (width - left) * std::clamp(hours / chart.lasts, 0.0, 1.0);
    }
    [[nodiscard]] double y(double stored) const {
        const double top = chart.top > 0.0 ? chart.top : 1.0;
        return room_above + tall * (1.0 - std::clamp(stored / top, 0.0, 1.0));
    }
};

void add_nights(Block& block, const Frame& frame) {
    for (const auto& night : frame.chart.nights)
        block.sheet.shapes.append({QPolygonF(QRectF(QPointF(frame.x(night.from), room_above),
                                                    QPointF(frame.x(night.to), room_above + tall))),
                                   night_grey});
}

void add_band(Block& block, const Frame& frame) {
    QPolygonF outline;
    const auto& chart = frame.chart;
    for (std::size_t point = 0; point < chart.at.size(); ++point)
        outline << QPointF(frame.x(chart.at[point]), frame.y(chart.one_in_ten[point]));
    for (std::size_t point = chart.at.size(); point-- > 0;)
        outline << QPointF(frame.x(chart.at[point]), frame.y(chart.nine_in_ten[point]));
    block.sheet.shapes.append({outline, band_grey});
    for (std::size_t point = 1; point < chart.at.size(); ++point)
        block.sheet.strokes.append({{frame.x(chart.at[point - 1]), frame.y(chart.likely[point - 1]),
                                     frame.x(chart.at[point]), frame.y(chart.likely[point])},
                                    1.6});
}

// Three steps of the stored energy, and each midnight with its day.
void add_scales(Block& block, const Frame& frame, const words::Language& language) {
    const double low = room_above + tall;
    for (int step = 0; step <= 2; ++step) {
        const double stored = frame.chart.top * step / 2.0;
        const double y = frame.y(stored);
        block.sheet.strokes.append({{left, y, frame.width, y}, step == 0 ? 1.0 : 0.3});
        put(block, in_qt(language, units::amount_in(stored * units::watt_hour, "kWh", 1)), letters,
            0.0, left - 4.0,
            y - (step == 0 ? line_height_of(letters) : line_height_of(letters) / 2.0),
            Align::right);
    }
    const auto& chart = frame.chart;
    const double first =
        (units::midnight_before(chart.starts) + units::day - chart.starts) / units::hour;
    const double apart = frame.x(24.0) - frame.x(0.0);
    const int every = std::max(1, static_cast<int>(std::ceil(34.0 / std::max(apart, 1.0))));
    int number = 0;
    for (double hours = first; hours < chart.lasts; hours += 24.0, ++number) {
        block.sheet.strokes.append({{frame.x(hours), low, frame.x(hours), low + 4.0}, 1.0});
        const QString day =
            in_qt(language, answers::short_weekday(chart.starts + (hours + 1.0) * units::hour));
        if (number % every == 0 && frame.x(hours) + width_of(day, letters) + 3.0 < frame.width)
            put(block, day, letters, frame.x(hours) + 3.0, frame.width, low + 2.0);
    }
    block.sheet.strokes.append({{left, room_above, left, low}, 1.0});
    block.height = low + 2.0 + line_height_of(letters);
}

// A letter above its hour; those that come too close to the one before stand under it in the list
// alone. The list tells them all.
void add_markers(Block& block, const Frame& frame, const words::Language& language) {
    double free_from = 0.0;
    char sign = 'a';
    for (const auto& marker : frame.chart.markers) {
        if (sign > 'z') break;
        const double x = frame.x(marker.at);
        const QString letter = QString(QLatin1Char(sign));
        block.sheet.strokes.append({{x, room_above, x, room_above + tall}, 0.5});
        const double wide = width_of(letter, letters);
        const double begins = std::min(x - wide / 2.0, frame.width - wide);
        if (begins >= free_from) {
            put(block, letter, letters, begins, wide, 0.0);
            free_from = begins + wide + 2.0;
        }
        add_lines(block, letter + QStringLiteral("  ") + in_qt(language, marker.label), letters,
                  frame.width - left, left);
        ++sign;
    }
}

double most_power(const std::vector<DaysChart::Hour>& hours) {
    double most = 0.0;
    for (const auto& hour : hours)
        most = std::max({most, hour.mean(hour.wanted), hour.mean(hour.sun_offered)});
    return most;
}

// Below the store, over the same hours: what the loads want as a line, what the sun offers in
// grey, each as the mean of its hour.
void add_flows(Block& block, const Frame& frame, const words::Language& language) {
    const auto& hours = frame.chart.hours;
    const double most = most_power(hours);
    if (!(most > 0.0)) return;
    const double top = block.height + 4.0;
    const double low = top + flows_tall;
    const auto y = [&](double power) { return low - flows_tall * power / most; };
    double before = low;
    for (const auto& hour : hours) {
        const double from = frame.x(hour.from);
        const double to = frame.x(hour.to);
        if (hour.sun_offered > 0.0)
            block.sheet.shapes.append(
                {QPolygonF(QRectF(QPointF(from, y(hour.mean(hour.sun_offered))), QPointF(to, low))),
                 sun_grey});
        const double wanted = y(hour.mean(hour.wanted));
        block.sheet.strokes.append({{from, before, from, wanted}, 1.0});
        block.sheet.strokes.append({{from, wanted, to, wanted}, 1.0});
        before = wanted;
    }
    block.sheet.strokes.append({{left, low, frame.width, low}, 1.0});
    put(block,
        in_qt(language,
              words::Amount{
                  .dimension = words::Dimension::power, .si = most, .digits = 2, .unit = "W"}),
        letters, 0.0, left - 4.0, top, Align::right);
    block.height = low + 3.0;
}

}  // namespace

Block days_plot(const DaysChart& chart, double width, const words::Language& language) {
    Block block;
    const Frame frame{chart, width};
    add_nights(block, frame);
    add_band(block, frame);
    add_scales(block, frame, language);
    add_flows(block, frame, language);
    add_markers(block, frame, language);
    if (most_power(chart.hours) > 0.0)
        add_lines(block, in_qt(language, faces::paper::what_flows_mean()), letters, width - left,
                  left);
    add_lines(block, in_qt(language, faces::paper::what_days_mean()), letters, width - left, left);
    return block;
}

}  // namespace printing
