#include "faces/days_plot.hpp"

#include <algorithm>
#include <array>
#include <cmath>
#include <optional>

#include <fmt/format.h>

#include "answers/clock_words.hpp"
#include "units/quantities.hpp"
#include "units/said.hpp"

namespace faces {

namespace {

using words::said;

constexpr int label_width = 9;

struct Signs {
    std::string_view sure;
    std::string_view likely;
    std::string_view at_best;
    std::string_view night;
    std::string_view side;
    std::string_view foot;
    std::string_view midnight;
    std::string_view corner;
};

constexpr Signs drawn = {"█", "▓", "░", "·", "│", "─", "┴", "└"};
constexpr Signs typed = {"#", "=", "-", ".", "|", "-", "+", "+"};

const Signs& signs_for(const Look& look) {
    return look.ascii ? typed : drawn;
}

// One column of the plot: a span of time and what is stored in its middle.
struct Slice {
    double middle = 0.0;  // h after the start
    double earliest = 0.0;
    double likely = 0.0;
    double latest = 0.0;
    bool night = false;
};

bool has_band(const answers::DaysChart& chart) {
    for (std::size_t point = 0; point < chart.at.size(); ++point) {
        if (chart.one_in_ten[point] - chart.nine_in_ten[point] > 0.02 * chart.top) {
            return true;
        }
    }
    return false;
}

std::vector<Slice> slices(const answers::DaysChart& chart, int columns) {
    std::vector<Slice> result;
    for (int column = 0; column < columns; ++column) {
        const double middle = (column + 0.5) / columns * chart.lasts;
        const auto after = std::ranges::lower_bound(chart.at, middle);
        const auto point =
            std::min(static_cast<std::size_t>(after - chart.at.begin()), chart.at.size() - 1);
        const double low = std::min(chart.nine_in_ten[point], chart.likely[point]);
        const double high = std::max(chart.one_in_ten[point], chart.likely[point]);
        const bool night =
            std::ranges::any_of(chart.nights, [middle](const answers::DaysChart::Span& span) {
                return middle >= span.from && middle < span.to;
            });
        result.push_back({.middle = middle,
                          .earliest = low,
                          .likely = chart.likely[point],
                          .latest = high,
                          .night = night});
    }
    return result;
}

// The sign of one cell; `bottom` and `top` are its energies.
std::string_view cell(const Slice& slice, double bottom, double top, bool band, const Look& look) {
    constexpr std::array<std::string_view, 9> eighths{"", "▁", "▂", "▃", "▄", "▅", "▆", "▇", "█"};
    const Signs& signs = signs_for(look);
    const std::string_view empty = slice.night ? signs.night : " ";
    const double middle = 0.5 * (bottom + top);
    if (!band && !look.ascii) {
        const double filled = std::clamp((slice.likely - bottom) / (top - bottom), 0.0, 1.0);
        const auto step = static_cast<std::size_t>(std::lround(8.0 * filled));
        return step == 0 ? empty : eighths[step];
    }
    if (middle <= slice.earliest) {
        return signs.sure;
    }
    if (middle <= slice.likely) {
        return band ? signs.likely : signs.sure;
    }
    return middle <= slice.latest && band ? signs.at_best : empty;
}

std::string side_label(int row, int rows, double top, const Look& look) {
    const auto energy = [&](double watt_hours) {
        return words::in(look.language, units::amount(watt_hours * units::watt_hour, 2));
    };
    if (row == 0) {
        return energy(top);
    }
    return row == rows / 2 && rows % 2 == 0 ? energy(top / 2.0) : "";
}

int column_of(double at, double lasts, int columns) {
    return std::clamp(static_cast<int>(at / lasts * columns), 0, columns - 1);
}

// Midnights and the names of the days that begin there.
struct DayAxis {
    std::string foot;
    std::string names;
};

DayAxis day_axis(const answers::DaysChart& chart, int columns, const Look& look) {
    const Signs& signs = signs_for(look);
    std::vector<std::string_view> foot(static_cast<std::size_t>(columns), signs.foot);
    std::string names(static_cast<std::size_t>(columns), ' ');
    const auto write = [&](int column, const std::string& name) {
        const int room = columns - column;
        const auto before = column == 0 ? ' ' : names[static_cast<std::size_t>(column - 1)];
        if (room >= static_cast<int>(name.size()) && before == ' ' &&
            names.find_first_not_of(' ', static_cast<std::size_t>(column)) == std::string::npos) {
            names.replace(static_cast<std::size_t>(column), name.size(), name);
        }
    };
    const units::LocalTime end = chart.starts + chart.lasts * units::hour;
    const double first_midnight = 24.0 - units::time_of_day(chart.starts) / units::hour;
    if (first_midnight / chart.lasts * columns >= 4.0) {
        write(0, in(look, answers::short_weekday(chart.starts)));
    }
    for (units::LocalTime day = units::midnight_before(chart.starts) + units::day; day < end;
         day = day + units::day) {
        const int column = column_of((day - chart.starts) / units::hour, chart.lasts, columns);
        foot[static_cast<std::size_t>(column)] = signs.midnight;
        write(column, in(look, answers::short_weekday(day)));
    }
    return {.foot = fmt::format("{}", fmt::join(foot, "")), .names = names};
}

// The chance that it is still out as each day begins, in hundredths; no line where its length is
// known.
std::optional<std::string> still_out_line(const answers::DaysChart& chart, int columns) {
    if (chart.still_out.empty()) return std::nullopt;
    std::string line(static_cast<std::size_t>(columns), ' ');
    const double first_midnight = 24.0 - units::time_of_day(chart.starts) / units::hour;
    for (double at = first_midnight; at < chart.lasts; at += 24.0) {
        const auto after = std::ranges::lower_bound(chart.at, at - 1e-6);
        if (after == chart.at.end()) break;
        const double share = chart.still_out[static_cast<std::size_t>(after - chart.at.begin())];
        const auto text = fmt::format("{:.0f}", 100.0 * share);
        const auto column = static_cast<std::size_t>(column_of(at, chart.lasts, columns));
        const bool free = column == 0 || line[column - 1] == ' ';
        if (free && column + text.size() <= line.size() &&
            line.find_first_not_of(' ', column) == std::string::npos)
            line.replace(column, text.size(), text);
    }
    return line;
}

std::string marker_line(const answers::DaysChart& chart, int columns) {
    std::string line(static_cast<std::size_t>(columns), ' ');
    for (const auto& marker : chart.markers) {
        auto column = static_cast<std::size_t>(column_of(marker.at, chart.lasts, columns));
        while (column + 1 < line.size() && line[column] != ' ') {
            ++column;
        }
        line[column] = marker.sign;
    }
    return line;
}

}  // namespace

std::vector<std::string> days_plot(const answers::DaysChart& chart, int width, int rows,
                                   const Look& look) {
    const Signs& signs = signs_for(look);
    const int columns = std::max(width - label_width - 1, 10);
    const auto parts = slices(chart, columns);
    const bool band = has_band(chart);
    const double top = chart.top > 0.0 ? chart.top : 1.0;
    std::vector<std::string> lines;
    for (int row = 0; row < rows; ++row) {
        std::string line = right_aligned(side_label(row, rows, top, look), label_width - 1) + " " +
                           std::string(signs.side);
        for (const auto& slice : parts) {
            line +=
                cell(slice, top * (rows - 1 - row) / rows, top * (rows - row) / rows, band, look);
        }
        lines.push_back(line);
    }
    const DayAxis axis = day_axis(chart, columns, look);
    lines.push_back(right_aligned("0", label_width - 1) + " " + std::string(signs.corner) +
                    axis.foot);
    lines.push_back(std::string(label_width + 1, ' ') + axis.names);
    if (const auto out = still_out_line(chart, columns)) {
        lines.push_back(right_aligned(in(look, said<"out, %">()), label_width - 1) + "  " + *out);
    }
    if (!chart.markers.empty()) {
        lines.push_back(std::string(label_width + 1, ' ') + marker_line(chart, columns));
    }
    return lines;
}

std::string plot_key(const answers::DaysChart& chart, const Look& look) {
    const Signs& signs = signs_for(look);
    const bool roomy = look.width >= 80;
    const bool band = has_band(chart);
    std::vector<std::string> entries;
    if (band) {
        entries.push_back(in(look, said<"{sign} 9 in 10">(signs.sure)));
        entries.push_back(in(look, said<"{sign} likely">(signs.likely)));
        entries.push_back(in(look, said<"{sign} 1 in 10">(signs.at_best)));
    }
    if (!chart.nights.empty()) entries.push_back(in(look, said<"{sign} night">(signs.night)));
    const bool explains = !entries.empty();
    if (!chart.still_out.empty()) entries.push_back(in(look, said<"out: still out">()));
    const std::string_view gap = roomy ? "  " : " ";
    std::string key = in(look, roomy ? said<"Stored in the packs">() : said<"Stored">());
    if (band && !roomy) key.clear();
    if (!key.empty() && !entries.empty()) key += explains ? ": " : gap;
    return key + fmt::format("{}", fmt::join(entries, gap));
}

}  // namespace faces
