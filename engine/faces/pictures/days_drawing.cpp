#include "faces/pictures/days_drawing.hpp"

#include <algorithm>

#include <fmt/format.h>

#include "answers/clock_words.hpp"
#include "faces/page.hpp"
#include "units/said.hpp"

namespace faces {

namespace {

using words::said;

// Places in the drawing, in its own unit.
constexpr double height = 380.0;
constexpr double left = 82.0;
constexpr double right = 708.0;
constexpr double stored_top = 26.0;
constexpr double stored_foot = 220.0;
constexpr double flow_top = 262.0;
constexpr double flow_foot = 340.0;

double across(const answers::DaysChart& chart, double at) {
    const double lasts = chart.lasts > 0.0 ? chart.lasts : 1.0;
    return left + (right - left) * std::clamp(at / lasts, 0.0, 1.0);
}

// From the foot up to the top, as the value goes from nothing to the most.
double up(double value, double most, double top, double foot) {
    return foot - (foot - top) * (most > 0.0 ? std::clamp(value / most, 0.0, 1.0) : 0.0);
}

std::string nights(const answers::DaysChart& chart) {
    std::string svg;
    for (const auto& night : chart.nights) {
        const double from = across(chart, night.from);
        svg += fmt::format(
            "<rect class=\"night\" x=\"{:.1f}\" y=\"{}\" width=\"{:.1f}\" height=\"{}\"/>\n", from,
            stored_top, across(chart, night.to) - from, flow_foot - stored_top);
    }
    return svg;
}

std::string stored(const answers::DaysChart& chart) {
    const auto y = [&](double energy) { return up(energy, chart.top, stored_top, stored_foot); };
    std::string high;
    std::string low;
    std::string likely;
    for (std::size_t i = 0; i < chart.at.size(); ++i) {
        const double x = across(chart, chart.at[i]);
        const std::size_t back = chart.at.size() - 1 - i;
        high += point_at(x, y(std::max(chart.one_in_ten[i], chart.likely[i])));
        low += point_at(across(chart, chart.at[back]),
                        y(std::min(chart.nine_in_ten[back], chart.likely[back])));
        likely += point_at(x, y(chart.likely[i]));
    }
    return fmt::format(
        "<polygon class=\"band\" points=\"{}{}\"/>\n<polyline class=\"likely\" points=\"{}\"/>\n",
        high, low, likely);
}

// The line at which the usable share is used up, where it is not at the foot.
std::string usable(const answers::DaysChart& chart) {
    const double kept = chart.likely.empty() ? 0.0 : chart.likely.front() - chart.usable;
    if (kept <= 0.01 * chart.top) return {};
    const double y = up(kept, chart.top, stored_top, stored_foot);
    return fmt::format(
        "<line class=\"limit\" x1=\"{0}\" y1=\"{2:.1f}\" x2=\"{1}\" "
        "y2=\"{2:.1f}\"/>\n",
        left, right, y);
}

// The chance that it is still out, falling from the top of the plot: always.
std::string still_out(const answers::DaysChart& chart) {
    if (chart.still_out.empty()) return {};
    std::string points;
    for (std::size_t i = 0; i < chart.at.size(); ++i)
        points += point_at(across(chart, chart.at[i]),
                           up(chart.still_out[i], 1.0, stored_top, stored_foot));
    return fmt::format("<polyline class=\"out\" points=\"{}\"/>\n", points);
}

double most_flow(const answers::DaysChart& chart) {
    double most = 1.0;
    for (const auto& hour : chart.hours)
        most = std::max({most, hour.mean(hour.wanted), hour.mean(hour.sun_offered)});
    return most;
}

// Sun as bars, loads as steps, each the mean of its hour.
std::string flows(const answers::DaysChart& chart, double most) {
    std::string bars;
    std::string steps;
    for (const auto& hour : chart.hours) {
        const double from = across(chart, hour.from);
        const double to = across(chart, hour.to);
        const double sun = up(hour.mean(hour.sun_offered), most, flow_top, flow_foot);
        if (hour.sun_offered > 0.0)
            bars += fmt::format(
                "<rect class=\"sun\" x=\"{:.1f}\" y=\"{:.1f}\" width=\"{:.1f}\" "
                "height=\"{:.1f}\"/>\n",
                from, sun, to - from, flow_foot - sun);
        const double load = up(hour.mean(hour.wanted), most, flow_top, flow_foot);
        steps += point_at(from, load) + point_at(to, load);
    }
    return bars + fmt::format("<polyline class=\"loads\" points=\"{}\"/>\n", steps);
}

std::string days(const answers::DaysChart& chart, const words::Language& language) {
    std::string svg;
    const auto end = chart.starts + chart.lasts * units::hour;
    const double a_day = across(chart, 24.0) - left;
    for (auto day = units::midnight_before(chart.starts) + units::day; day < end;
         day = day + units::day) {
        const double x = across(chart, (day - chart.starts) / units::hour);
        svg += line_of("axis", x, stored_top, x, flow_foot + 6.0);
        if (a_day >= 34.0 && x + 30.0 < drawing_width)
            svg += words_at(x + 3.0, flow_foot + 18.0, "begin",
                            words::in(language, answers::short_weekday(day)));
    }
    return svg;
}

std::string pins(const answers::DaysChart& chart, const words::Language& language) {
    std::string svg;
    for (const auto& marker : chart.markers) {
        const double x = across(chart, marker.at);
        svg += fmt::format(
            "<g><title>{}</title><circle class=\"pin\" cx=\"{:.1f}\" cy=\"{}\" "
            "r=\"8\"/>",
            in_xml(words::in(language, marker.label)), x, stored_foot + 14.0);
        svg += words_at(x, stored_foot + 18.0, "sign", std::string(1, marker.sign)) + "</g>\n";
    }
    return svg;
}

}  // namespace

Drawing drawing_of(const answers::DaysChart& chart, const words::Language& language) {
    const double most = most_flow(chart);
    const auto energy = [&](double value) {
        return words::in(language, units::amount(value * units::watt_hour, 2));
    };
    std::string pieces = nights(chart) + stored(chart) + usable(chart) + still_out(chart) +
                         flows(chart, most) + days(chart, language);
    pieces += line_of("axis", left, stored_foot, right, stored_foot) +
              line_of("axis", left, stored_top, left, stored_foot);
    pieces += line_of("axis", left, flow_foot, right, flow_foot) +
              line_of("axis", left, flow_top, left, flow_foot);
    pieces += pins(chart, language);
    pieces += words_at(
        left, 16.0, "begin",
        words::in(language, chart.still_out.empty()
                                ? said<"Stored in the packs: band 8 times in 10, line likely">()
                                : said<"Stored in the packs: band 8 times in 10, line likely. "
                                       "Dotted: still out">()));
    pieces += words_at(left - 5.0, stored_top + 10.0, "end", energy(chart.top));
    pieces += words_at(left - 5.0, stored_foot, "end", "0");
    pieces += words_at(left, flow_top - 8.0, "begin",
                       words::in(language, said<"Each hour: loads as a line, sun as bars">()));
    pieces += words_at(left - 5.0, flow_top + 10.0, "end",
                       words::in(language, units::amount(most * units::watt, 2)));
    pieces += words_at(left - 5.0, flow_foot, "end", "0");
    return {.title = words::in(language, said<"What is stored in the packs over the days">()),
            .pieces = std::move(pieces),
            .height = height};
}

}  // namespace faces
