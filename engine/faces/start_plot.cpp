#include "faces/start_plot.hpp"

#include <algorithm>
#include <array>
#include <cmath>
#include <utility>

#include <fmt/format.h>

namespace faces {

namespace {

using words::Amount;
using words::Dimension;
using words::said;

constexpr double end_of_bar = 1.5;  // of the limit
constexpr int least_label_width = 33;
constexpr int figure_width = 13;

// Sure, likely and possible use, with the limit drawn across.
std::string bar(const answers::StartBar& bar, int width, const Look& look) {
    const auto cell_of = [&](double share) {
        return static_cast<int>(std::lround(std::min(share, end_of_bar) / end_of_bar * width));
    };
    const int limit = std::min(cell_of(1.0), width - 1);
    std::string drawn;
    for (int cell = 0; cell < width; ++cell) {
        const bool sure = cell < cell_of(bar.low);
        const bool likely = cell < cell_of(bar.likely);
        const bool possible = cell < cell_of(bar.high);
        if (cell == limit) {
            drawn += look.ascii ? "|" : possible ? "┃" : "│";
        } else if (sure) {
            drawn += look.ascii ? "#" : "█";
        } else if (likely) {
            drawn += look.ascii ? "=" : "▓";
        } else if (possible) {
            drawn += look.ascii ? "-" : "░";
        } else {
            drawn += look.ascii ? " " : " ";
        }
    }
    return drawn;
}

Ink ink_of(const answers::StartBar& bar) {
    return bar.low > 1.0 ? Ink::stop : bar.high > bar.comfortable ? Ink::caution : Ink::plain;
}

// The value at a moment, straight between the instants.
double value_at_time(const std::vector<double>& time, const std::vector<double>& value,
                     double moment) {
    const auto after = std::ranges::lower_bound(time, moment);
    if (after == time.begin()) return value.front();
    if (after == time.end()) return value.back();
    const auto i = static_cast<std::size_t>(after - time.begin());
    const double span = time[i] - time[i - 1];
    const double along = span > 0.0 ? (moment - time[i - 1]) / span : 1.0;
    return value[i - 1] + along * (value[i] - value[i - 1]);
}

std::string trace_of(const answers::StartChart& chart, const std::vector<double>& value,
                     double bottom, double top, int width, const Look& look) {
    constexpr std::array<const char*, 8> blocks{"▁", "▂", "▃", "▄", "▅", "▆", "▇", "█"};
    constexpr std::array<const char*, 8> plain_signs{"_", ".", ":", "-", "=", "+", "*", "#"};
    std::string drawn;
    for (int column = 0; column < width; ++column) {
        const double moment = chart.time.back() * (column + 0.5) / width;
        const double share =
            top > bottom ? (value_at_time(chart.time, value, moment) - bottom) / (top - bottom)
                         : 1.0;
        const auto level = static_cast<std::size_t>(std::clamp(std::floor(share * 8.0), 0.0, 7.0));
        drawn += look.ascii ? plain_signs[level] : blocks[level];
    }
    return drawn;
}

std::vector<answers::StartBar> chosen(const answers::StartChart& chart, std::size_t most) {
    std::vector<answers::StartBar> bars = chart.bars;
    if (most == 0 || bars.size() <= most) return bars;
    std::ranges::stable_sort(bars, [](const answers::StartBar& a, const answers::StartBar& b) {
        return std::pair(a.binding, a.high) > std::pair(b.binding, b.high);
    });
    bars.resize(most);
    return bars;
}

Amount share(double value) {
    return {.dimension = Dimension::fraction, .si = value, .unit = "%", .decimals = 0};
}
Amount amperes(double value, int decimals) {
    return {.dimension = Dimension::current, .si = value, .unit = "A", .decimals = decimals};
}
Amount volts(double value) {
    return {.dimension = Dimension::voltage, .si = value, .unit = "V", .decimals = 2};
}

std::string current_label(const answers::StartChart& chart, const Look& look) {
    return in(look, said<"current, {current} at first">(amperes(chart.current.front(), 0)));
}
std::string voltage_label(const answers::StartChart& chart, const Look& look) {
    return in(look, said<"voltage at inverter, {voltage}">(
                        volts(std::ranges::min(chart.direct_voltage))));
}

// Room for the longest label, up to half of the page.
int label_width_of(const std::vector<answers::StartBar>& bars, const answers::StartChart& chart,
                   const Look& look) {
    int widest = 0;
    for (const auto& each : bars)
        widest = std::max(widest, width_of(plain(each.label)));
    if (!chart.time.empty())
        widest = std::max(
            {widest, width_of(current_label(chart, look)), width_of(voltage_label(chart, look))});
    return std::clamp(widest + 3, least_label_width, std::max(least_label_width, look.width / 2));
}

void add_course(const answers::StartChart& chart, const Look& look, int label_width,
                std::vector<std::string>& lines) {
    if (chart.time.empty()) return;
    const int width = std::clamp(look.width - label_width - figure_width - 2, 16, 60);
    const auto row = [&](std::string label, const std::vector<double>& value, double bottom,
                         double top, std::string end) {
        lines.push_back(padded("  " + std::move(label), label_width) +
                        trace_of(chart, value, bottom, top, width, look) + "  " + end);
    };
    const double most = std::ranges::max(chart.current);
    row(in(look, said<"speed">()), chart.speed, 0.0, 1.0,
        chart.comes_up ? words::in(look.language, share(chart.speed.back()))
                       : in(look, said<"stalls at {speed}">(share(chart.speed.back()))));
    row(current_label(chart, look), chart.current, 0.0, most,
        words::in(look.language, amperes(chart.current.back(), 1)));
    const double lowest = std::ranges::min(chart.direct_voltage);
    const double highest = std::ranges::max(chart.direct_voltage);
    row(voltage_label(chart, look), chart.direct_voltage, lowest - 0.3 * (highest - lowest),
        highest, words::in(look.language, volts(highest)));
    lines.push_back(padded("", label_width) + padded("0 s", width - 6) +
                    right_aligned(words::in(look.language, Amount{.dimension = Dimension::duration,
                                                                  .si = chart.time.back(),
                                                                  .digits = 2,
                                                                  .unit = "s"}),
                                  6));
}

}  // namespace

std::vector<std::string> start_plot(const answers::StartChart& chart, std::size_t bars,
                                    const Look& look) {
    std::vector<std::string> lines;
    const Ink ink = chart.verdict == "will_not_start" ? Ink::stop
                    : chart.verdict == "marginal"     ? Ink::caution
                                                      : Ink::strong;
    lines.push_back(inked(in(look, said<"{load} {verdict}">(chart.name, chart.words)), ink, look));
    const auto shown = chosen(chart, bars);
    const int label_width = label_width_of(shown, chart, look);
    const int width = std::clamp(look.width - label_width - figure_width - 2, 16, 60);
    for (const auto& each : shown)
        lines.push_back(
            padded(shortened((each.binding ? "> " : "  ") + plain(each.label), label_width - 1),
                   label_width) +
            inked(bar(each, width, look), ink_of(each), look) + "  " + plain(each.shown));
    add_course(chart, look, label_width, lines);
    return lines;
}

}  // namespace faces
