#include "faces/pictures/curves_drawing.hpp"

#include <algorithm>
#include <array>

#include <fmt/format.h>

#include "faces/page.hpp"

namespace faces {

namespace {

// Places in the drawing, in its own unit.
constexpr double left = 58.0;
constexpr double right = 708.0;
constexpr double top = 34.0;
constexpr double foot = 220.0;
constexpr double row_height = 20.0;
constexpr double a_day = 24.0;  // h
constexpr std::array<std::string_view, 3> strokes{"likely dotted", "likely dashed", "likely"};

double across(double hour) {
    return left + (right - left) * hour / a_day;
}

double most_of(const answers::DayCurves& curves) {
    double most = 0.0;
    for (const auto& curve : curves.curves)
        for (const double value : curve.values)
            most = std::max(most, value);
    return most > 0.0 ? most : 1.0;
}

std::string hours() {
    constexpr int apart = 6;
    std::string pieces;
    for (int hour = 0; hour <= 24; hour += apart) {
        const double x = across(hour);
        pieces += line_of("grid", x, top, x, foot);
        pieces +=
            words_at(x, foot + 17.0, hour == 24 ? "end" : "middle", fmt::format("{:02} h", hour));
    }
    return pieces;
}

}  // namespace

Drawing drawing_of(const answers::DayCurves& curves, const words::Language& language) {
    const double most = most_of(curves);
    std::string pieces =
        words_at(12.0, 16.0, "begin strong", words::in(language, curves.title)) + hours();
    pieces += words_at(left - 5.0, top + 10.0, "end",
                       fmt::format("{:.0f} {}", most, unit_shown(curves.unit)));
    pieces += words_at(left - 5.0, foot, "end", "0");
    pieces += line_of("axis", left, foot, right, foot);
    double y = foot + 44.0;
    for (std::size_t i = 0; i < curves.curves.size(); ++i) {
        const auto& curve = curves.curves[i];
        const auto stroke = strokes[std::min(i, strokes.size() - 1)];
        std::string points;
        for (std::size_t k = 0; k < curve.values.size(); ++k)
            points += point_at(across(curves.at[k]), foot - (foot - top) * curve.values[k] / most);
        pieces += path_of(stroke, points) + line_of(stroke, left, y - 4.0, left + 50.0, y - 4.0);
        pieces += words_at(
            left + 60.0, y, "begin",
            words::in(language, words::said<"{curve}, {energy}">(curve.label, curve.words)));
        y += row_height;
    }
    return {.title = words::in(language, curves.title), .pieces = std::move(pieces), .height = y};
}

}  // namespace faces
