#include "faces/bars.hpp"

#include <algorithm>
#include <array>
#include <cmath>

#include <fmt/format.h>

namespace faces {

namespace {

using words::said;

struct Signs {
    std::string_view sure;
    std::string_view likely;
    std::string_view at_best;
    std::string_view side;
    std::string_view chosen;
};

constexpr Signs drawn = {"█", "▓", "░", "│", "▸"};
constexpr Signs typed = {"#", "=", "-", "|", ">"};

const Signs& signs_for(const Look& look) {
    return look.ascii ? typed : drawn;
}

bool has_range(const answers::BarChart& chart) {
    return std::ranges::any_of(chart.bars,
                               [](const answers::Bar& bar) { return bar.high > bar.low; });
}

std::string strip(const answers::Bar& bar, double top, int cells, const Signs& signs) {
    const auto filled = [&](double value) {
        return top > 0.0 ? static_cast<int>(std::lround(value / top * cells)) : 0;
    };
    const int low = filled(bar.low);
    const int likely = std::max(low, filled(bar.likely));
    const int high = std::max(likely, filled(bar.high));
    std::string text;
    for (int cell = 0; cell < cells; ++cell)
        text += cell < low      ? signs.sure
                : cell < likely ? signs.likely
                : cell < high   ? signs.at_best
                                : " ";
    return text;
}

}  // namespace

std::vector<std::string> drawn_bars(const answers::BarChart& chart, const Look& look) {
    const Signs& signs = signs_for(look);
    std::vector<std::string> lines;
    std::string heading = plain(chart.title);
    if (has_range(chart)) {
        const std::string key = in(look, said<"{sure} at least  {likely} likely  {best} at best">(
                                             signs.sure, signs.likely, signs.at_best));
        const int gap = look.width - width_of(heading) - width_of(key);
        heading += gap >= 2 ? std::string(static_cast<std::size_t>(gap), ' ') + key : "";
    }
    lines.push_back(inked(heading, Ink::strong, look));
    int label = 0;
    int words = 0;
    double top = 0.0;
    for (const auto& bar : chart.bars) {
        label = std::max(label, width_of(bar.label));
        words = std::max(words, width_of(bar.words));
        top = std::max(top, bar.high);
    }
    constexpr int fewest_cells = 4;
    label = std::min({label, look.width / 3, std::max(8, look.width - words - 5 - fewest_cells)});
    const int cells = std::max(look.width - label - words - 5, 0);
    for (const auto& bar : chart.bars) {
        lines.push_back(fmt::format("{}{} {}{} {}", bar.chosen ? signs.chosen : " ",
                                    padded(shortened(bar.label, label), label), signs.side,
                                    strip(bar, top, cells, signs), plain(bar.words)));
    }
    return lines;
}

std::vector<std::string> drawn_curves(const answers::DayCurves& curves, const Look& look) {
    constexpr std::array<std::string_view, 9> eighths{" ", "▁", "▂", "▃", "▄", "▅", "▆", "▇", "█"};
    constexpr std::array<std::string_view, 9> typed_eighths{" ", ".", ":", "-", "=",
                                                            "+", "*", "%", "#"};
    const auto& steps = look.ascii ? typed_eighths : eighths;
    const Signs& signs = signs_for(look);
    std::vector<std::string> lines{inked(curves.title, Ink::strong, look)};
    int label = 0;
    double top = 0.0;
    for (const auto& curve : curves.curves) {
        label = std::max(label, width_of(curve.label));
        for (const double value : curve.values)
            top = std::max(top, value);
    }
    int words = 0;
    for (const auto& curve : curves.curves) {
        words = std::max(words, width_of(curve.words));
    }
    // A narrow page takes every second value.
    const auto points = curves.at.size();
    const std::size_t stride =
        static_cast<int>(points) + label + words + 5 > look.width ? std::size_t{2} : std::size_t{1};
    for (const auto& curve : curves.curves) {
        std::string line = " " + padded(curve.label, label) + " " + std::string(signs.side);
        for (std::size_t point = 0; point < points; point += stride) {
            const double eighth = top > 0.0 ? 8.0 * curve.values[point] / top : 0.0;
            line += steps[static_cast<std::size_t>(std::ceil(std::clamp(eighth, 0.0, 8.0)))];
        }
        lines.push_back(line + std::string(signs.side) + " " + plain(curve.words));
    }
    std::string hours(points / stride + 2, ' ');
    for (std::size_t point = 0; point < points; point += stride) {
        const double at = curves.at[point];
        if (std::fmod(at, 6.0) > 1e-9) continue;
        const std::string name = fmt::format("{:.0f}", at);
        hours.replace(point / stride, name.size(), name);
    }
    lines.push_back(std::string(static_cast<std::size_t>(label) + 3, ' ') + hours + "h");
    return lines;
}

}  // namespace faces
