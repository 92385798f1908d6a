#include "faces/days_svg.hpp"

#include <algorithm>

#include <fmt/format.h>

#include "answers/clock_words.hpp"
#include "faces/wiring_svg.hpp"
#include "units/text.hpp"

namespace faces {

namespace {

// Places in the drawing, in its own unit.
constexpr double width = 720.0;
constexpr double height = 380.0;
constexpr double left = 82.0;
constexpr double right = 708.0;
constexpr double stored_top = 26.0;
constexpr double stored_foot = 220.0;
constexpr double flow_top = 262.0;
constexpr double flow_foot = 340.0;

constexpr std::string_view style =
    "text{font:13px sans-serif;fill:#222}.back{fill:#fff}.night{fill:#dfe3ea}.axis{stroke:#555;"
    "stroke-width:1}.band{fill:#c96a12;fill-opacity:.35}.likely{fill:none;stroke:#a34700;"
    "stroke-width:2.5}.usable{stroke:#222;stroke-dasharray:6 4}.sun{fill:#0b6e99}"
    ".loads{fill:none;stroke:#222;stroke-width:1.6}.pin{fill:#222}.sign{fill:#fff;font-size:11px;"
    "text-anchor:middle}.middle{text-anchor:middle}.end{text-anchor:end}"
    "@media(prefers-color-scheme:dark){text{fill:#eee}.back{fill:#000}.night{fill:#1c2430}"
    ".axis{stroke:#aaa}.band{fill:#ffb14a}.likely{stroke:#ffc878}.usable{stroke:#eee}"
    ".sun{fill:#4fb6de}.loads{stroke:#eee}.pin{fill:#eee}.sign{fill:#000}}"
    "@media(max-width:600px){text{font-size:18px}.sign{font-size:13px}}"
    "@media print{text{fill:#000}.back{fill:#fff}.night{fill:#e4e4e4}.axis{stroke:#000}"
    ".band{fill:#999}.likely{stroke:#000}.usable{stroke:#000}.sun{fill:#777}"
    ".loads{stroke:#000}.pin{fill:#000}.sign{fill:#fff}}";

double across(const answers::DaysChart& chart, double at) {
    const double lasts = chart.lasts > 0.0 ? chart.lasts : 1.0;
    return left + (right - left) * std::clamp(at / lasts, 0.0, 1.0);
}

// From the foot up to the top, as the value goes from nothing to the most.
double up(double value, double most, double top, double foot) {
    return foot - (foot - top) * (most > 0.0 ? std::clamp(value / most, 0.0, 1.0) : 0.0);
}

std::string point(double x, double y) {
    return fmt::format("{:.1f},{:.1f} ", x, y);
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
        high += point(x, y(std::max(chart.one_in_ten[i], chart.likely[i])));
        low += point(across(chart, chart.at[back]),
                     y(std::min(chart.nine_in_ten[back], chart.likely[back])));
        likely += point(x, y(chart.likely[i]));
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
        "<line class=\"usable\" x1=\"{0}\" y1=\"{2:.1f}\" x2=\"{1}\" "
        "y2=\"{2:.1f}\"/>\n",
        left, right, y);
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
        steps += point(from, load) + point(to, load);
    }
    return bars + fmt::format("<polyline class=\"loads\" points=\"{}\"/>\n", steps);
}

std::string line(double x1, double y1, double x2, double y2) {
    return fmt::format(
        "<line class=\"axis\" x1=\"{:.1f}\" y1=\"{:.1f}\" x2=\"{:.1f}\" "
        "y2=\"{:.1f}\"/>\n",
        x1, y1, x2, y2);
}

std::string words(double x, double y, std::string_view place, std::string_view text) {
    return fmt::format("<text class=\"{}\" x=\"{:.1f}\" y=\"{:.1f}\">{}</text>\n", place, x, y,
                       in_xml(std::string(text)));
}

std::string days(const answers::DaysChart& chart) {
    std::string svg;
    const auto end = chart.starts + chart.lasts * units::hour;
    const double a_day = across(chart, 24.0) - left;
    for (auto day = units::midnight_before(chart.starts) + units::day; day < end;
         day = day + units::day) {
        const double x = across(chart, (day - chart.starts) / units::hour);
        svg += line(x, stored_top, x, flow_foot + 6.0);
        if (a_day >= 34.0 && x + 30.0 < width)
            svg += words(x + 3.0, flow_foot + 18.0, "begin", answers::short_weekday(day));
    }
    return svg;
}

std::string pins(const answers::DaysChart& chart) {
    std::string svg;
    for (const auto& marker : chart.markers) {
        const double x = across(chart, marker.at);
        svg += fmt::format(
            "<g><title>{}</title><circle class=\"pin\" cx=\"{:.1f}\" cy=\"{}\" "
            "r=\"8\"/>",
            in_xml(marker.label), x, stored_foot + 14.0);
        svg += words(x, stored_foot + 18.0, "sign", std::string(1, marker.sign)) + "</g>\n";
    }
    return svg;
}

}  // namespace

std::string in_svg(const answers::DaysChart& chart, const std::string& title) {
    const double most = most_flow(chart);
    const auto energy = [](double value) { return units::show(value * units::watt_hour, 2); };
    std::string svg = fmt::format(
        "<svg xmlns=\"http://www.w3.org/2000/svg\" viewBox=\"0 0 {} {}\" role=\"img\" "
        "aria-label=\"{}\">\n<style>{}</style>\n<rect class=\"back\" width=\"{}\" "
        "height=\"{}\"/>\n",
        width, height, in_xml(title), style, width, height);
    svg += nights(chart) + stored(chart) + usable(chart) + flows(chart, most) + days(chart);
    svg += line(left, stored_foot, right, stored_foot) + line(left, stored_top, left, stored_foot);
    svg += line(left, flow_foot, right, flow_foot) + line(left, flow_top, left, flow_foot);
    svg += pins(chart);
    svg += words(left, 16.0, "begin", "Stored in the packs: band 8 times in 10, line likely");
    svg += words(left - 5.0, stored_top + 10.0, "end", energy(chart.top));
    svg += words(left - 5.0, stored_foot, "end", "0");
    svg += words(left, flow_top - 8.0, "begin", "Each hour: loads as a line, sun as bars");
    svg += words(left - 5.0, flow_top + 10.0, "end", units::show(most * units::watt, 2));
    svg += words(left - 5.0, flow_foot, "end", "0");
    return svg + "</svg>\n";
}

}  // namespace faces
