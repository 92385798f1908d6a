#include "answers/packs/builds_chart.hpp"

#include <algorithm>
#include <cmath>

#include "answers/chance_words.hpp"
#include "answers/columns.hpp"
#include "answers/packs/sentences.hpp"
#include "answers/shown.hpp"

namespace answers {

namespace {

using sizing::Build;
using words::said;
using Place = BuildsView::Place;

double percent(units::Probability chance) {
    return 100.0 * chance.value();
}

BuildPoint point_of(const Build& build) {
    const auto& figures = build.figures;
    BuildPoint point{.packs = build.packs,
                     .panels = build.panels,
                     .chance = percent(figures.of),
                     .low = percent(figures.low),
                     .high = percent(figures.high),
                     .members = figures.members,
                     .chance_words = chance_and_interval(figures)};
    if (build.bill.weight) point.weight = shown(*build.bill.weight).value;
    if (build.bill.price) point.price = build.bill.price->amount();
    return point;
}

// The point of that build, added where the frontier does not hold it.
BuildPoint& point_at(BuildsChart& chart, const Build& build) {
    const auto found = std::ranges::find_if(chart.points, [&](const BuildPoint& point) {
        return point.packs == build.packs && point.panels == build.panels;
    });
    if (found != chart.points.end()) return *found;
    return chart.points.emplace_back(point_of(build));
}

// Steps of 1, 2 or 5 that make a handful over the span.
double step_over(double span) {
    const double tenth = std::pow(10.0, std::floor(std::log10(span / 3.0)));
    for (const double digit : {1.0, 2.0, 5.0})
        if (span <= 5.0 * digit * tenth) return digit * tenth;
    return 10.0 * tenth;
}

void set_scale(BuildsView& view) {
    const double least = view.places.front().at;
    const double most = view.places.back().at;
    view.step = step_over(most > least ? most - least : std::max(1.0, most));
    view.from = view.step * std::floor(least / view.step);
    view.to = view.step * std::ceil(most / view.step);
    if (!(view.to > view.from)) view.to = view.from + view.step;
}

// Places come from the least figure on, of equal ones the surest first.
void mark_unbeaten(std::vector<Place>& places, const std::vector<BuildPoint>& points) {
    double surest = 0.0;
    for (Place& place : places) {
        place.unbeaten = points[place.point].chance > surest;
        surest = std::max(surest, points[place.point].chance);
    }
}

void add_view(BuildsChart& chart, BuildsView view, std::optional<double> BuildPoint::*figure) {
    for (std::size_t number = 0; number < chart.points.size(); ++number)
        if (const auto& known = chart.points[number].*figure)
            view.places.push_back({.point = number, .at = *known});
    if (view.places.empty()) return;
    std::ranges::stable_sort(view.places, [&](const Place& a, const Place& b) {
        if (a.at != b.at) return a.at < b.at;
        return chart.points[a.point].chance > chart.points[b.point].chance;
    });
    mark_unbeaten(view.places, chart.points);
    std::erase_if(view.places, [&](const Place& place) {
        const BuildPoint& point = chart.points[place.point];
        return !place.unbeaten && !point.answers && !point.of_file;
    });
    set_scale(view);
    chart.views.push_back(std::move(view));
}

}  // namespace

std::optional<BuildsChart> builds_chart(const questions::PacksFound& found) {
    const auto& builds = found.builds;
    BuildsChart chart{.goal = percent(builds.goal)};
    for (const Build& build : builds.frontier)
        chart.points.push_back(point_of(build));
    if (chart.points.empty()) return std::nullopt;
    if (const auto& named = builds.with_these_panels) {
        BuildPoint& point = point_at(chart, *named);
        point = point_of(*named);
        point.answers = true;
    }
    if (const auto& of_file = found.of_the_file) {
        BuildPoint& point = point_at(chart, *of_file);
        const bool answers = point.answers;
        point = point_of(*of_file);
        point.answers = answers;
        point.of_file = true;
    }
    add_view(chart, {.name = "weight", .heading = said<"packs and panels weigh">(), .unit = "kg"},
             &BuildPoint::weight);
    add_view(chart, {.name = "price", .heading = said<"packs and panels cost">(), .unit = "1"},
             &BuildPoint::price);
    return chart;
}

Series builds_table(const BuildsChart& chart, const BuildsView& view) {
    const auto each = [&](auto of_point) {
        return [&, of_point](std::size_t row) {
            return of_point(chart.points[view.places[row].point]);
        };
    };
    const std::size_t rows = view.places.size();
    const auto in = [](Column column, const char* unit) {
        column.unit = unit;
        return column;
    };
    Series series{.name = "builds_by_" + view.name,
                  .title = said<"Builds that no other beats, and how sure each is">()};
    series.columns = {
        column("packs", said<"packs">(), rows, each([](const auto& p) { return double(p.packs); })),
        column("panels", said<"panels">(), rows,
               each([](const auto& p) { return double(p.panels); })),
        in(column(view.name, view.heading, rows,
                  [&](std::size_t row) { return view.places[row].at; }),
           view.unit.c_str()),
        in(column("chance", said<"chance of lasting">(), rows,
                  each([](const auto& p) { return p.chance; })),
           "%"),
        in(column("low", said<"at least, 19 times in 20">(), rows,
                  each([](const auto& p) { return p.low; })),
           "%"),
        in(column("high", said<"at most, 19 times in 20">(), rows,
                  each([](const auto& p) { return p.high; })),
           "%"),
        column("what", said<"what it is">(), rows, each([](const auto& p) {
                   return p.answers   ? said<"answer">()
                          : p.of_file ? said<"of the file">()
                                      : words::Said();
               }))};
    return series;
}

}  // namespace answers
