#include <algorithm>
#include <cmath>

#include <fmt/format.h>

#include "answers/clock_words.hpp"
#include "print/plots.hpp"

namespace printing {

namespace {

using answers::DaysChart;

constexpr Type letters{.size = plot_letters};
constexpr double left = 46.0;  // for the figures of the scale
constexpr double tall = 170.0;
constexpr double room_above = 14.0;  // for the letters of events
constexpr double night_grey = 0.93;
constexpr double band_grey = 0.75;

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
void add_scales(Block& block, const Frame& frame) {
    const double low = room_above + tall;
    for (int step = 0; step <= 2; ++step) {
        const double stored = frame.chart.top * step / 2.0;
        const double y = frame.y(stored);
        block.sheet.strokes.append({{left, y, frame.width, y}, step == 0 ? 1.0 : 0.3});
        put(block, QString::fromStdString(fmt::format("{:.1f} kWh", stored / 1000.0)), letters, 0.0,
            left - 4.0, y - (step == 0 ? line_height_of(letters) : line_height_of(letters) / 2.0),
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
        const QString day = QString::fromStdString(
            answers::short_weekday(chart.starts + (hours + 1.0) * units::hour));
        if (number % every == 0 && frame.x(hours) + width_of(day, letters) + 3.0 < frame.width)
            put(block, day, letters, frame.x(hours) + 3.0, frame.width, low + 2.0);
    }
    block.sheet.strokes.append({{left, room_above, left, low}, 1.0});
    block.height = low + 2.0 + line_height_of(letters);
}

// A letter above its hour; those that come too close to the one before stand under it in the list
// alone. The list tells them all.
void add_markers(Block& block, const Frame& frame) {
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
        add_lines(block, fmt::format("{}  {}", sign, marker.label), letters, frame.width - left,
                  left);
        ++sign;
    }
}

}  // namespace

Block days_plot(const DaysChart& chart, double width) {
    Block block;
    const Frame frame{chart, width};
    add_nights(block, frame);
    add_band(block, frame);
    add_scales(block, frame);
    add_markers(block, frame);
    add_lines(
        block,
        "Stored in the packs: black line likely, grey band from the bad to the good end, pale "
        "grey night.",
        letters, width - left, left);
    return block;
}

}  // namespace printing
