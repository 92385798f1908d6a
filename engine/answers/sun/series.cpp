#include "answers/sun/series.hpp"

#include <array>

#include "answers/columns.hpp"
#include "answers/sun/bars.hpp"
#include "answers/sun/words.hpp"

namespace answers {

using words::said;

namespace {

Series days_table(const questions::SunResults& results) {
    const auto& days = results.recharge.days;
    const auto rows = days.size();
    Series series{.name = "sun_days", .title = said<"What each day gives back">(), .columns = {}};
    series.columns = {
        column("day", said<"day of the outage">(), rows, [](std::size_t row) { return row + 1; }),
        column("date", said<"date">(), rows,
               [&](std::size_t row) { return day_label(days[row].midnight); }),
        column("low", said<"nine times in ten at least">(), rows,
               [&](std::size_t row) { return days[row].offered.low; }),
        column("likely", said<"likely">(), rows,
               [&](std::size_t row) { return days[row].offered.likely; }),
        column("high", said<"one time in ten more than">(), rows,
               [&](std::size_t row) { return days[row].offered.high; }),
        column("mean", said<"mean">(), rows,
               [&](std::size_t row) { return days[row].offered.mean; })};
    return series;
}

Series placements_table(const questions::SunResults& results) {
    const auto& yields = results.placements;
    const auto rows = yields.size();
    Series series{.name = "placements", .title = said<"How to set them up">(), .columns = {}};
    series.columns = {
        column("placement", said<"placement">(), rows,
               [&](std::size_t row) { return words_for(yields[row].kind); }),
        column("stands", said<"how">(), rows,
               [&](std::size_t row) { return stands(yields[row].aims); }),
        column("low", said<"dull day">(), rows,
               [&](std::size_t row) { return yields[row].day.low; }),
        column("likely", said<"likely day">(), rows,
               [&](std::size_t row) { return yields[row].day.likely; }),
        column("high", said<"bright day">(), rows,
               [&](std::size_t row) { return yields[row].day.high; }),
        column("mean", said<"mean">(), rows, [&](std::size_t row) { return yields[row].day.mean; }),
        column("times_flat", said<"times flat">(), rows,
               [&](std::size_t row) { return times_flat(results, yields[row]).value_or(0.0); })};
    return series;
}

Series panels_table(const scenario::Scenario& scenario, const questions::SunAndUnit& unit) {
    const auto& counts = unit.counts;
    const auto rows = counts.size();
    const double days = outage_days(scenario);
    const auto lasting = [&](units::Duration chance::Figures::*time) {
        return [&, time](std::size_t row) { return counts[row].figures.*time; };
    };
    Series series{.name = "panels", .title = said<"How many panels">(), .columns = {}};
    series.columns = {
        column("panels", said<"panels">(), rows,
               [&](std::size_t row) { return counts[row].panels; }),
        column("low", said<"a day, at least">(), rows,
               [&](std::size_t row) { return counts[row].sun.kept.low / days; }),
        column("likely", said<"a day, likely">(), rows,
               [&](std::size_t row) { return counts[row].sun.kept.likely / days; }),
        column("high", said<"a day, at best">(), rows,
               [&](std::size_t row) { return counts[row].sun.kept.high / days; }),
        column("too_cold", said<"not taken a day: too cold">(), rows,
               [&](std::size_t row) { return counts[row].sun.mean.too_cold / days; }),
        column("full", said<"not taken a day: full">(), rows,
               [&](std::size_t row) { return counts[row].sun.mean.full / days; }),
        column("lost", said<"lost in charging a day">(), rows,
               [&](std::size_t row) { return counts[row].sun.mean.lost / days; }),
        column("clipped", said<"turned away a day">(), rows,
               [&](std::size_t row) { return counts[row].sun.mean.clipped / days; }),
        column("count_on", said<"may be counted on for">(), rows,
               lasting(&chance::Figures::count_on)),
        column("half", said<"half last longer">(), rows, lasting(&chance::Figures::half)),
        column("one_in_ten", said<"one in ten lasts longer">(), rows,
               lasting(&chance::Figures::one_in_ten)),
        column("days_gained", said<"days gained">(), rows,
               [&](std::size_t row) { return days_gained(counts, row); }),
        column("chance", said<"lasts the whole outage">(), rows,
               [&](std::size_t row) { return counts[row].figures.of; })};
    return series;
}

Series hours_table(const questions::SunDayCurves& day) {
    const DayCurves curves = sun_curves(day);
    Series series{.name = "sun_hours", .title = curves.title, .columns = {}};
    series.columns.push_back(
        {.name = "at", .heading = said<"after midnight">(), .unit = "h", .points = curves.at});
    const std::array headings{said<"dull day">(), said<"likely day">(), said<"bright day">()};
    for (std::size_t i = 0; i < headings.size(); ++i) {
        series.columns.push_back({.name = curves.curves[i].name,
                                  .heading = headings[i],
                                  .unit = curves.unit,
                                  .points = curves.curves[i].values});
    }
    return series;
}

}  // namespace

std::vector<Series> sun_series(const scenario::Scenario& scenario,
                               const questions::SunResults& results) {
    if (results.setup.groups.empty()) {
        return {};
    }
    std::vector<Series> series{days_table(results), placements_table(results)};
    if (results.unit && !results.unit->counts.empty()) {
        series.push_back(panels_table(scenario, *results.unit));
    }
    series.push_back(hours_table(results.day));
    return series;
}

}  // namespace answers
