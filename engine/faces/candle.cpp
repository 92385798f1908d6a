#include "faces/candle.hpp"

#include <algorithm>
#include <array>
#include <cmath>

#include <fmt/format.h>

namespace faces {

namespace {

// Hours between marks, so that the labels do not touch.
double mark_step(double outage, int rows) {
    constexpr std::array steps{1.0, 2.0, 3.0, 6.0, 12.0, 24.0, 48.0, 96.0, 168.0, 336.0};
    for (const double step : steps) {
        if (outage / step <= rows / 1.5) {
            return step;
        }
    }
    return outage;
}

std::string mark_label(double hours) {
    return hours >= 24.0 && std::fmod(hours, 24.0) == 0.0 ? fmt::format("{:.0f} d", hours / 24.0)
                                                          : fmt::format("{:.0f} h", hours);
}

// Marks beside the rows, the top row being the length of the outage.
std::vector<std::string> marks(double outage, int rows) {
    std::vector<std::string> labels(static_cast<std::size_t>(rows));
    const double step = mark_step(outage, rows);
    for (double hours = step; hours <= outage * 1.0001; hours += step) {
        const int row =
            std::clamp(rows - static_cast<int>(std::lround(hours / outage * rows)), 0, rows - 1);
        labels[static_cast<std::size_t>(row)] = mark_label(hours);
    }
    return labels;
}

std::string wax(double height, const Look& look) {
    constexpr std::array<std::string_view, 9> eighths{" ", "▁", "▂", "▃", "▄", "▅", "▆", "▇", "█"};
    if (look.ascii) {
        return height >= 0.5 ? "##" : "  ";
    }
    const auto step = static_cast<std::size_t>(std::lround(8.0 * std::clamp(height, 0.0, 1.0)));
    return std::string(eighths[step]) + std::string(eighths[step]);
}

}  // namespace

std::vector<std::string> candle(double burns, double outage, int rows, const Look& look) {
    const double height = std::clamp(burns / outage, 0.0, 1.0) * rows;
    const double seen = look.ascii ? std::round(height) : std::round(8.0 * height) / 8.0;
    const int flame_row = rows - static_cast<int>(std::ceil(seen)) - 1;
    const auto labels = marks(outage, rows);
    std::vector<std::string> lines;
    for (int row = -1; row < rows; ++row) {
        const std::string label = row < 0 ? "" : labels[static_cast<std::size_t>(row)];
        const std::string body = row == flame_row ? "()" : wax(seen - (rows - 1 - row), look);
        lines.push_back(right_aligned(label, 4) + " " + inked(body, Ink::flame, look) + " ");
    }
    return lines;
}

}  // namespace faces
