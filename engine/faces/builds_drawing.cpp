#include "faces/builds_drawing.hpp"

#include <fmt/format.h>

namespace faces {

namespace {

using answers::BuildPoint;
using answers::BuildsChart;
using answers::BuildsView;

// Places in the drawing, in its own unit.
constexpr double left = 58.0;
constexpr double right = 690.0;
constexpr double top = 46.0;
constexpr double foot = 270.0;
constexpr double row_height = 20.0;

double up(double chance) {
    return foot - (foot - top) * chance / 100.0;
}

double across(const BuildsView& view, double at) {
    const double span = view.to > view.from ? view.to - view.from : 1.0;
    return left + (right - left) * (at - view.from) / span;
}

// "12 kg"; a price has no unit of its own.
std::string amount(double at, const std::string& unit) {
    return unit == "1" ? fmt::format("{:g}", at) : fmt::format("{:g} {}", at, unit);
}

std::string frame(const BuildsView& view) {
    constexpr double apart = 25.0;
    std::string pieces;
    for (double chance = 0.0; chance <= 100.0; chance += apart)
        pieces += line_of(chance > 0.0 ? "grid" : "axis", left, up(chance), right, up(chance)) +
                  words_at(left - 5.0, up(chance) + 4.0, "end", fmt::format("{:.0f}", chance));
    for (double at = view.from; at <= view.to + 1e-9; at += view.step)
        pieces += line_of("axis", across(view, at), foot, across(view, at), foot + 5.0) +
                  words_at(across(view, at), foot + 19.0, "middle", amount(at, view.unit));
    return pieces;
}

bool is_named(const BuildPoint& point) {
    return point.answers || point.of_file;
}

// A dot; a number, explained below, for what the answer or the file names.
std::string mark(double x, const BuildPoint& point, bool unbeaten, int number) {
    const double y = up(point.chance);
    const std::string place = fmt::format("cx=\"{:.1f}\" cy=\"{:.1f}\"", x, y);
    std::string pieces = line_of("axis", x, up(point.low), x, up(point.high));
    if (!is_named(point))
        return pieces +
               fmt::format("<circle class=\"{}\" {} r=\"4\"/>\n", unbeaten ? "pin" : "ring", place);
    return pieces + fmt::format("<circle class=\"pin\" {} r=\"9\"/>\n", place) +
           words_at(x, y + 4.0, "sign", std::to_string(number));
}

std::string row(const BuildsView& view, double at, const BuildPoint& point, int number, double y) {
    return words_at(left, y, "begin strong",
                    fmt::format("{}: {} {}, {} {}: {}, {}{}{}", number, point.packs,
                                point.packs == 1 ? "pack" : "packs", point.panels,
                                point.panels == 1 ? "panel" : "panels", point.chance_words,
                                amount(at, view.unit), point.answers ? "; the answer" : "",
                                point.of_file ? "; as the file has it" : ""));
}

}  // namespace

Drawing drawing_of(const BuildsChart& chart, const BuildsView& view) {
    const std::string title =
        fmt::format("How many times in 100 it lasts, against what {}", view.heading);
    std::string pieces = words_at(12.0, 16.0, "begin strong", title) + frame(view);
    pieces += line_of("limit", left, up(chart.goal), right, up(chart.goal)) +
              words_at(left + 4.0, up(chart.goal) - 4.0, "begin", "the goal");
    double y = foot + 48.0;
    pieces +=
        words_at(left, y, "begin", "Each dot is a build; no other beats a filled one in both.");
    int number = 0;
    for (const auto& place : view.places) {
        const auto& point = chart.points[place.point];
        if (is_named(point)) {
            y += row_height;
            pieces += row(view, place.at, point, ++number, y);
        }
        pieces += mark(across(view, place.at), point, place.unbeaten, number);
    }
    return {.title = title, .pieces = std::move(pieces), .height = y + row_height};
}

}  // namespace faces
