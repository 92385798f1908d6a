#include "faces/pictures/builds_drawing.hpp"

#include <fmt/format.h>

#include "faces/page.hpp"

namespace faces {

namespace {

using answers::BuildPoint;
using answers::BuildsChart;
using answers::BuildsView;
using words::said;
using words::said_of;

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

std::string amount(const BuildsView& view, double at, const words::Language& language) {
    return words::in(language, weight_or_price(at, view.unit));
}

std::string frame(const BuildsView& view, const words::Language& language) {
    constexpr double apart = 25.0;
    std::string pieces;
    for (double chance = 0.0; chance <= 100.0; chance += apart)
        pieces += line_of(chance > 0.0 ? "grid" : "axis", left, up(chance), right, up(chance)) +
                  words_at(left - 5.0, up(chance) + 4.0, "end", fmt::format("{:.0f}", chance));
    for (double at = view.from; at <= view.to + 1e-9; at += view.step)
        pieces += line_of("axis", across(view, at), foot, across(view, at), foot + 5.0) +
                  words_at(across(view, at), foot + 19.0, "middle", amount(view, at, language));
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

words::Said row_of(const BuildPoint& point, int number, const words::Said& figure) {
    const auto build = packs_and_panels(point);
    if (point.answers && point.of_file)
        return said<"{place}: {build}: {chance}, {figure}; the answer; as the file has it">(
            number, build, point.chance_words, figure);
    if (point.answers)
        return said<"{place}: {build}: {chance}, {figure}; the answer">(number, build,
                                                                        point.chance_words, figure);
    return said<"{place}: {build}: {chance}, {figure}; as the file has it">(
        number, build, point.chance_words, figure);
}

std::string row(const BuildsView& view, double at, const BuildPoint& point, int number, double y,
                const words::Language& language) {
    return words_at(left, y, "begin strong",
                    words::in(language, row_of(point, number, weight_or_price(at, view.unit))));
}

}  // namespace

words::Said weight_or_price(double figure, std::string_view unit) {
    constexpr int digits = 6;
    const bool weighs = unit == "kg";
    return said<"{amount}">(
        words::Amount{.dimension = weighs ? words::Dimension::mass : words::Dimension::price,
                      .si = figure,
                      .digits = digits});
}

words::Said packs_and_panels(const BuildPoint& point) {
    return said<"{packs}, {panels}">(said_of<"{n} pack", "{n} packs">(point.packs),
                                     said_of<"{n} panel", "{n} panels">(point.panels));
}

Drawing drawing_of(const BuildsChart& chart, const BuildsView& view,
                   const words::Language& language) {
    const std::string title = words::in(
        language, said<"How many times in 100 it lasts, against what {weighs}">(view.heading));
    std::string pieces = words_at(12.0, 16.0, "begin strong", title) + frame(view, language);
    pieces += line_of("limit", left, up(chart.goal), right, up(chart.goal)) +
              words_at(left + 4.0, up(chart.goal) - 4.0, "begin",
                       words::in(language, said<"the goal">()));
    double y = foot + 48.0;
    pieces += words_at(
        left, y, "begin",
        words::in(language, said<"Each dot is a build; no other beats a filled one in both.">()));
    int number = 0;
    for (const auto& place : view.places) {
        const auto& point = chart.points[place.point];
        if (is_named(point)) {
            y += row_height;
            pieces += row(view, place.at, point, ++number, y, language);
        }
        pieces += mark(across(view, place.at), point, place.unbeaten, number);
    }
    return {.title = title, .pieces = std::move(pieces), .height = y + row_height};
}

}  // namespace faces
