#include "answers/sun/bars.hpp"

#include <algorithm>

#include "answers/chance_words.hpp"
#include "answers/clock_words.hpp"
#include "answers/shown.hpp"
#include "answers/sun/words.hpp"

namespace answers {

namespace {

using words::Said;
using words::said;
using words::said_of;

double watt_hours(units::Energy energy) {
    return energy / units::watt_hour;
}

Bar bar_of(Said label, const solar::DayRange& range, Said words) {
    return {.label = std::move(label),
            .low = watt_hours(range.low),
            .likely = watt_hours(range.likely),
            .high = watt_hours(range.high),
            .words = std::move(words)};
}

BarChart recharge_bars(const questions::SunResults& results) {
    BarChart chart{
        .name = "recharge", .title = said<"What each day gives back">(), .unit = "W.h", .bars = {}};
    for (const auto& day : results.recharge.days) {
        chart.bars.push_back(
            bar_of(day_label(day.midnight), day.offered, range_in_words(day.offered)));
    }
    return chart;
}

BarChart placement_bars(const questions::SunResults& results) {
    BarChart chart{
        .name = "placements",
        .title = said<"How to set them up, on a day like {day}">(day_label(results.day.midnight)),
        .unit = "W.h",
        .bars = {}};
    for (const auto& yield : results.placements) {
        const auto times = times_flat(results, yield);
        const bool flat = yield.kind == solar::PlacementKind::flat;
        Said label = words_for(yield.kind);
        if (yield.kind == solar::PlacementKind::as_described ||
            yield.kind == solar::PlacementKind::best_fixed) {
            label = said<"{placement}, {stands}">(label, stands_in_short(yield.aims));
        }
        Said gives = range_in_words(yield.day);
        if (times && !flat) {
            gives = said<"{energy}, x {times}">(gives, words::with_decimals(*times, 1));
        }
        Bar bar = bar_of(std::move(label), yield.day, std::move(gives));
        bar.chosen = yield.kind == solar::PlacementKind::as_described;
        chart.bars.push_back(std::move(bar));
    }
    return chart;
}

Said lasts_in_words(const scenario::Scenario& scenario, const chance::Figures& figures) {
    if (figures.half >= scenario.outage.lasts) {
        return said<"to the end {often}">(times_in_100(figures.of));
    }
    return said<"lasts {time} ({often})">(length_in_words(figures.count_on),
                                          goal_in_words(figures.goal));
}

BarChart panel_bars(const scenario::Scenario& scenario, const questions::SunAndUnit& unit) {
    BarChart chart{.name = "panels",
                   .title = said<"How many panels: what a day of the outage gives back">(),
                   .unit = "W.h",
                   .bars = {}};
    const double days = outage_days(scenario);
    for (const auto& count : unit.counts) {
        const auto& kept = count.sun.kept;
        const solar::DayRange day{.low = kept.low / days,
                                  .likely = kept.likely / days,
                                  .high = kept.high / days,
                                  .mean = kept.mean / days};
        Bar bar = bar_of(said_of<"{n} panel", "{n} panels">(count.panels), day,
                         said<"{energy}, {lasting}">(in_words(day.likely, 2),
                                                     lasts_in_words(scenario, count.figures)));
        bar.chosen = count.panels == questions::panels_in(scenario);
        chart.bars.push_back(std::move(bar));
    }
    return chart;
}

// Mean power of each half-hour.
std::vector<double> half_hours(const solar::SunSeries& series, units::LocalTime midnight) {
    constexpr int parts = 48;
    std::vector<double> watts(parts, 0.0);
    const units::Duration part = units::day / static_cast<double>(parts);
    for (const auto& step : series) {
        const units::Duration from = step.start - midnight;
        for (int index = 0; index < parts; ++index) {
            const units::Duration begins = static_cast<double>(index) * part;
            const units::Duration shared =
                std::min<units::Duration>(begins + part, from + step.duration) -
                std::max<units::Duration>(begins, from);
            if (shared > units::Duration{}) {
                watts[static_cast<std::size_t>(index)] +=
                    step.offered / units::watt * static_cast<double>(shared / part);
            }
        }
    }
    return watts;
}

}  // namespace

std::vector<BarChart> sun_bars(const scenario::Scenario& scenario,
                               const questions::SunResults& results) {
    std::vector<BarChart> charts;
    if (results.setup.groups.empty()) {
        return charts;
    }
    charts.push_back(recharge_bars(results));
    charts.push_back(placement_bars(results));
    if (results.unit && !results.unit->counts.empty()) {
        charts.push_back(panel_bars(scenario, *results.unit));
    }
    return charts;
}

DayCurves sun_curves(const questions::SunDayCurves& day) {
    DayCurves curves{.title = said<"Through {day}, on three skies">(day_label(day.midnight)),
                     .unit = "W",
                     .at = {},
                     .curves = {}};
    for (int part = 0; part < 48; ++part) {
        curves.at.push_back(0.5 * part);
    }
    for (const auto& [name, label, series] : {std::tuple{"low", said<"dull">(), &day.low},
                                              std::tuple{"likely", said<"likely">(), &day.likely},
                                              std::tuple{"high", said<"bright">(), &day.high}}) {
        curves.curves.push_back({.name = name,
                                 .label = label,
                                 .values = half_hours(*series, day.midnight),
                                 .words = in_words(solar::sum(*series).offered, 2)});
    }
    return curves;
}

}  // namespace answers
