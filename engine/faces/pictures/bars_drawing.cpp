#include "faces/pictures/bars_drawing.hpp"

#include <algorithm>

#include <fmt/format.h>

#include "faces/page.hpp"

namespace faces {

namespace {

using words::Amount;
using words::Dimension;
using words::said;

// Places in the drawing, in its own unit.
constexpr double left = 12.0;
constexpr double right = 708.0;
constexpr double first_row = 34.0;
constexpr double row_height = 34.0;
constexpr double bar_height = 12.0;
constexpr double course_height = 70.0;
constexpr double longest = 1.5;  // of a limit that is overstepped

struct Row {
    std::string label;
    double low = 0.0;
    double likely = 0.0;
    double high = 0.0;
    std::string words;
    bool strong = false;
};

double across(double value, double top) {
    return top > 0.0 ? (right - left) * std::clamp(value / top, 0.0, 1.0) : 0.0;
}

// Its words above the bar, so that long ones do not take the bar's place on a phone.
std::string drawn(const Row& row, double top, double y) {
    const std::string begin = row.strong ? "begin strong" : "begin";
    const std::string end = row.strong ? "end strong" : "end";
    std::string pieces = words_at(left, y, begin, row.label) + words_at(right, y, end, row.words);
    const double bar = y + 5.0;
    pieces += box_of("band", left, bar, across(row.high, top), bar_height);
    pieces += box_of("sure", left, bar, across(row.low, top), bar_height);
    const double likely = left + across(row.likely, top);
    if (row.high > row.low)
        pieces += line_of("likely", likely, bar - 2.0, likely, bar + bar_height + 2.0);
    return pieces;
}

// The rows under a heading; the next free place below them.
double add_rows(std::string& pieces, const std::vector<Row>& rows, double top, double from) {
    double y = from;
    for (const Row& row : rows) {
        pieces += drawn(row, top, y);
        y += row_height;
    }
    return y;
}

double most_of(const std::vector<double>& values) {
    return values.empty() ? 0.0 : std::ranges::max(values);
}

// One curve over the time of a start; from nothing at its foot to its most.
std::string course_of(const std::vector<double>& time, const std::vector<double>& values,
                      const std::string& label, const std::string& most, double top) {
    const double foot = top + course_height - 18.0;
    const double lasts = time.back() > 0.0 ? time.back() : 1.0;
    const double highest = most_of(values) > 0.0 ? most_of(values) : 1.0;
    std::string points;
    for (std::size_t i = 0; i < time.size(); ++i)
        points += point_at(left + (right - left) * time[i] / lasts,
                           foot - (foot - top - 6.0) * values[i] / highest);
    return words_at(left, top, "begin", label) + words_at(right, top, "end", most) +
           line_of("axis", left, foot, right, foot) + path_of("likely", points);
}

double add_courses(std::string& pieces, const answers::StartChart& chart, double from,
                   const words::Language& language) {
    if (chart.time.size() < 2) return from;
    double y = from + 10.0;
    const auto add = [&](const std::vector<double>& values, const words::Said& label,
                         const words::Said& most) {
        pieces +=
            course_of(chart.time, values, words::in(language, label), words::in(language, most), y);
        y += course_height;
    };
    add(chart.speed, said<"speed">(),
        said<"{share} of the synchronous speed at most">(Amount{.dimension = Dimension::fraction,
                                                                .si = most_of(chart.speed),
                                                                .unit = "%",
                                                                .decimals = 0}));
    add(chart.current, said<"current of the motor">(),
        said<"{current} at most">(
            Amount{.dimension = Dimension::current, .si = most_of(chart.current), .unit = "A"}));
    add(chart.direct_voltage, said<"voltage at the inverter">(),
        said<"{voltage} at least">(Amount{.dimension = Dimension::voltage,
                                          .si = std::ranges::min(chart.direct_voltage),
                                          .unit = "V",
                                          .decimals = 2}));
    pieces += words_at(left, y - 8.0, "begin", "0 s") +
              words_at(right, y - 8.0, "end",
                       words::in(language, Amount{.dimension = Dimension::duration,
                                                  .si = chart.time.back(),
                                                  .digits = 2,
                                                  .unit = "s"}));
    return y + 8.0;
}

}  // namespace

Drawing drawing_of(const answers::BarChart& chart, const words::Language& language) {
    std::vector<Row> rows;
    double top = 0.0;
    for (const auto& bar : chart.bars) {
        rows.push_back({words::in(language, bar.label), bar.low, bar.likely, bar.high,
                        words::in(language, bar.words), bar.chosen});
        top = std::max(top, bar.high);
    }
    std::string pieces = words_at(left, 16.0, "begin strong", words::in(language, chart.title));
    const double end = add_rows(pieces, rows, top, first_row + 8.0);
    return {.title = words::in(language, chart.title),
            .pieces = std::move(pieces),
            .height = end - 4.0};
}

Drawing drawing_of(const answers::StartChart& chart, const words::Language& language) {
    std::vector<Row> rows;
    for (const auto& bar : chart.bars)
        rows.push_back({words::in(language, bar.label), std::min(bar.low, longest),
                        std::min(bar.likely, longest), std::min(bar.high, longest),
                        words::in(language, bar.shown), bar.binding});
    std::string pieces =
        words_at(left, 16.0, "begin strong",
                 words::in(language, said<"{load} {verdict}">(chart.name, chart.words)));
    pieces += words_at(right, 16.0, "end",
                       words::in(language, said<"share of each limit; the line is the limit">()));
    const double from = first_row + 8.0;
    const double end = add_rows(pieces, rows, longest, from);
    const double limit = left + across(1.0, longest);
    if (!rows.empty())
        pieces += line_of("limit", limit, from + 2.0, limit, end - row_height + 22.0);
    const double height = add_courses(pieces, chart, end, language);
    return {.title = words::in(language, said<"Whether it starts: {load}">(chart.name)),
            .pieces = std::move(pieces),
            .height = height};
}

}  // namespace faces
