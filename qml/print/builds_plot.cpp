#include <algorithm>
#include <cmath>

#include "faces/paper.hpp"
#include "faces/pictures/builds_drawing.hpp"
#include "print/plots.hpp"

namespace printing {

namespace on_paper = faces::paper;

namespace {

using answers::BuildPoint;
using answers::BuildsChart;
using answers::BuildsView;

constexpr Type letters{.size = plot_letters};
constexpr Type bold_letters{.size = plot_letters, .bold = true};
constexpr double left = 46.0;  // for the figures of the scale
constexpr double tall = 170.0;
constexpr double room_above = 14.0;
constexpr double room_beside = 8.0;
constexpr int most_listed = 12;  // so that a report stays short
constexpr double mark = 3.0;     // half of a point's width

struct Frame {
    const BuildsView& view;
    double width = 0.0;

    [[nodiscard]] double x(double figure) const {
        return left + room_beside +
               (width - left - 2.0 * room_beside) * (figure - view.from) / (view.to - view.from);
    }
    [[nodiscard]] static double y(double percent) {
        return room_above + tall * (1.0 - std::clamp(percent / 100.0, 0.0, 1.0));
    }
};

void add_scales(Block& block, const Frame& frame, const words::Language& language) {
    for (int percent = 0; percent <= 100; percent += 25) {
        const double y = Frame::y(percent);
        block.sheet.strokes.append({{left, y, frame.width, y}, percent == 0 ? 1.0 : 0.3});
        put(block, QStringLiteral("%1 %").arg(percent), letters, 0.0, left - 4.0,
            y - line_height_of(letters) / 2.0, Align::right);
    }
    const double low = room_above + tall;
    const auto& view = frame.view;
    double free_from = left;  // words of the scale that would meet are left out
    const int steps = static_cast<int>(std::lround((view.to - view.from) / view.step));
    for (int step = 0; step <= steps; ++step) {
        const double figure = view.from + step * view.step;
        const double x = frame.x(figure);
        const QString words = in_qt(language, faces::weight_or_price(figure, view.unit));
        const double wide = width_of(words, letters);
        block.sheet.strokes.append({{x, low, x, low + 4.0}, 1.0});
        const double begins = std::clamp(x - wide / 2.0, left, frame.width - wide);
        if (begins < free_from) continue;
        put(block, words, letters, begins, wide, low + 5.0);
        free_from = begins + wide + 4.0;
    }
    block.sheet.strokes.append({{left, room_above, left, low}, 1.0});
    block.height = low + 5.0 + line_height_of(letters);
}

// Dashes, and their word at the left end.
void add_goal(Block& block, const Frame& frame, double goal, const words::Language& language) {
    const double y = Frame::y(goal);
    for (double x = left; x < frame.width; x += 9.0)
        block.sheet.strokes.append({{x, y, std::min(x + 5.0, frame.width), y}, 1.0});
    const words::Amount chance{
        .dimension = words::Dimension::fraction, .si = goal / 100.0, .unit = "%", .decimals = 0};
    put(block, in_qt(language, on_paper::goal(chance)), bold_letters, left + 4.0, frame.width,
        y - line_height_of(bold_letters));
}

void add_point(Block& block, const BuildPoint& point, double x) {
    const double y = Frame::y(point.chance);
    block.sheet.strokes.append({{x, Frame::y(point.low), x, Frame::y(point.high)}, 0.8});
    const double half = point.answers ? 1.8 * mark : mark;
    const QPolygonF diamond({{x, y - half}, {x + half, y}, {x, y + half}, {x - half, y}});
    const QPolygonF square(QRectF(x - half, y - half, 2.0 * half, 2.0 * half));
    block.sheet.shapes.append({point.of_file && !point.answers ? square : diamond, 0.0});
    if (point.of_file && !point.answers)
        block.sheet.shapes.append(
            {QPolygonF(QRectF(x - half + 1.0, y - half + 1.0, 2.0 * half - 2.0, 2.0 * half - 2.0)),
             1.0});
}

void add_points(Block& block, const BuildsChart& chart, const Frame& frame) {
    const BuildPoint* before = nullptr;
    double was = 0.0;
    for (const auto& place : frame.view.places) {
        const BuildPoint& point = chart.points[place.point];
        const double x = frame.x(place.at);
        if (place.unbeaten) {
            if (before)
                block.sheet.strokes.append(
                    {{was, Frame::y(before->chance), x, Frame::y(point.chance)}, 0.5});
            before = &point;
            was = x;
        }
        add_point(block, point, x);
    }
}

// Beside the named builds so many of the others as stay on one page; how many were left out.
int list_builds(Block& block, const BuildsChart& chart, const Frame& frame,
                const words::Language& language) {
    int left_out = 0;
    int listed = 0;
    for (const auto& place : frame.view.places) {
        const BuildPoint& point = chart.points[place.point];
        const bool always = point.answers || point.of_file;
        if (!always && (!place.unbeaten || listed >= most_listed)) {
            ++left_out;
            continue;
        }
        if (!always) ++listed;
        const auto line = on_paper::build(faces::weight_or_price(place.at, frame.view.unit),
                                          faces::packs_and_panels(point), point.chance_words,
                                          point.answers, point.of_file);
        add_lines(block, in_qt(language, line), point.answers ? bold_letters : letters,
                  frame.width - left, left);
    }
    return left_out;
}

}  // namespace

Block builds_plot(const BuildsChart& chart, const BuildsView& view, double width,
                  const words::Language& language) {
    Block block;
    const Frame frame{view, width};
    add_scales(block, frame, language);
    add_goal(block, frame, chart.goal, language);
    add_points(block, chart, frame);
    add_lines(block, in_qt(language, on_paper::what_builds_mean(view.heading)), letters,
              width - left, left);
    const int left_out = list_builds(block, chart, frame, language);
    if (left_out > 0)
        add_lines(block, in_qt(language, on_paper::builds_left_out(left_out)), letters,
                  width - left, left);
    return block;
}

}  // namespace printing
