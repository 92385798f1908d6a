#include "answers/sun/answer.hpp"

#include <algorithm>
#include <cmath>

#include "answers/cautions.hpp"
#include "answers/clock_words.hpp"
#include "answers/outage/findings.hpp"
#include "answers/shown.hpp"
#include "answers/sun/bars.hpp"
#include "answers/sun/findings.hpp"
#include "answers/sun/sentences.hpp"
#include "answers/sun/series.hpp"
#include "answers/sun/shares.hpp"
#include "answers/sun/words.hpp"
#include "answers/sun/working.hpp"

namespace answers {

using words::said;

namespace {

using scenario::Scenario;

template <class Written>
Value value_of(Written quantity) {
    return quantity_or_reason(shown(quantity), said<"the number is not finite">());
}

Value value_of(int count) {
    return {static_cast<std::int64_t>(count)};
}

Value number_of(double value, int decimals) {
    return quantity_or_reason(plain_number(value, decimals), said<"the number is not finite">());
}

Members range_of(const solar::DayRange& range, double share = 1.0) {
    return {{"low", said<"nine times in ten at least">(), value_of(range.low * share)},
            {"likely", said<"likely">(), value_of(range.likely * share)},
            {"high", said<"one time in ten more than">(), value_of(range.high * share)},
            {"mean", said<"mean">(), value_of(range.mean * share)}};
}

Members place_of(const questions::SunResults& results) {
    const auto& site = results.setup.site;
    return {{"name", said<"name">(), {site.name}},
            {"latitude", said<"latitude">(), value_of(site.at.latitude)},
            {"longitude", said<"longitude">(), value_of(site.at.longitude)},
            {"elevation", said<"elevation">(), value_of(site.elevation)},
            {"utc_offset", said<"clock ahead of UTC">(), value_of(site.utc_offset)},
            {"clearness", said<"mean clearness of the month">(),
             number_of(site.mean_clearness(results.day.midnight).value(), 2)},
            {"source", said<"known from">(), {site.source}}};
}

Value days_of(const questions::SunResults& results) {
    List list;
    for (std::size_t i = 0; i < results.recharge.days.size(); ++i) {
        const auto& day = results.recharge.days[i];
        Members members{{"day", said<"day">(), value_of(static_cast<int>(i) + 1)},
                        {"date",
                         said<"date">(),
                         {Code{time_in_iso(day.midnight).substr(0, 10), day_label(day.midnight)}}}};
        for (auto& member : range_of(day.offered)) {
            members.push_back(std::move(member));
        }
        list.push_back({std::move(members)});
    }
    return {std::move(list)};
}

Value placements_of(const questions::SunResults& results) {
    List list;
    for (const auto& yield : results.placements) {
        Members members{
            {"placement", said<"placement">(), {Code{key_for(yield.kind), words_for(yield.kind)}}},
            {"stands", said<"set up">(), {stands(yield.aims)}}};
        if (yield.aims.size() == 1) {
            members.push_back({"tilt", said<"tilt">(), value_of(yield.aims.front().tilt)});
            members.push_back({"azimuth", said<"azimuth">(), value_of(yield.aims.front().azimuth)});
        }
        for (auto& member : range_of(yield.day)) {
            members.push_back(std::move(member));
        }
        const auto times = times_flat(results, yield);
        members.push_back({"times_flat", said<"times flat">(),
                           times
                               ? number_of(*times, 2)
                               : Value{Absent{said<"panels flat on the ground give nothing">()}}});
        list.push_back({std::move(members)});
    }
    return {std::move(list)};
}

Value counts_of(const Scenario& scenario, const questions::SunAndUnit& unit) {
    const double per_day = 1.0 / outage_days(scenario);
    List list;
    for (std::size_t i = 0; i < unit.counts.size(); ++i) {
        const auto& count = unit.counts[i];
        const auto& figures = count.figures;
        list.push_back({Members{
            {"panels", said<"panels">(), value_of(count.panels)},
            {"per_day", said<"kept a day">(), {range_of(count.sun.kept, per_day)}},
            {"shares", said<"of it, a day">(), {sun_shares(count.sun.mean, per_day)}},
            {"count_on", said<"may be counted on for">(), value_of(figures.count_on)},
            {"nine_in_ten", said<"nine in ten last longer">(), value_of(figures.nine_in_ten)},
            {"half", said<"half last longer">(), value_of(figures.half)},
            {"one_in_ten", said<"one in ten lasts longer">(), value_of(figures.one_in_ten)},
            {"days_gained", said<"days gained">(), number_of(days_gained(unit.counts, i), 1)},
            {"chance", said<"chance of lasting">(), value_of(figures.of)},
            {"members", said<"members run">(), value_of(figures.members)}}});
    }
    return {std::move(list)};
}

Value enough_of(const questions::SunAndUnit& unit) {
    const auto& enough = unit.enough;
    if (!enough) {
        return {
            Absent{said<"each further panel up to {n} still helps">(unit.counts.back().panels)}};
    }
    return {Members{{"panels", said<"panels">(), value_of(enough->panels)},
                    {"limited_by", {}, {Code{key_for(enough->why), {}}}},
                    {"why", said<"more do not help because">(), {why_in_words(enough->why)}}}};
}

// Of the likely course, apart: what the panels could give, and where it stayed.
Members energy_of(const outage::Ledger& ledger) {
    return {
        {"offered", said<"offered at the battery">(), value_of(ledger.sun_offered)},
        {"used", said<"straight into loads">(), value_of(ledger.sun_used)},
        {"stored", said<"into the packs">(), value_of(ledger.sun_stored)},
        {"charging_loss", said<"of it not stored in charging">(), value_of(ledger.charging_loss)},
        {"unused", said<"not taken">(), value_of(ledger.sun_unused)},
        {"clipped", said<"turned away by the controller">(), value_of(ledger.sun_clipped)}};
}

void add_unit(Members& values, const Scenario& scenario, const questions::SunResults& results) {
    if (!results.unit) {
        for (const auto& [key, label] :
             {std::pair{"lasts", said<"lasts">()},
              std::pair{"chance_of_lasting", said<"chance of lasting">()},
              std::pair{"energy", said<"energy">()}, std::pair{"panels", said<"how many panels">()},
              std::pair{"enough_panels", said<"panels that still help">()}}) {
            values.push_back({key, label, {Absent{results.why_no_unit}}});
        }
        return;
    }
    const auto& unit = *results.unit;
    const auto& figures = unit.figures;
    values.push_back(
        {"lasts",
         said<"lasts, over all that is not known">(),
         {Members{{"count_on", said<"may be counted on for">(), value_of(figures.count_on)},
                  {"nine_in_ten", said<"nine in ten last longer">(), value_of(figures.nine_in_ten)},
                  {"half", said<"half last longer">(), value_of(figures.half)},
                  {"one_in_ten", said<"one in ten lasts longer">(), value_of(figures.one_in_ten)},
                  {"members", said<"members run">(), value_of(figures.members)}}}});
    values.push_back({"chance_of_lasting", said<"chance of lasting">(), value_of(figures.of)});
    values.push_back(
        {"energy", said<"sun, over the likely course">(), {energy_of(unit.plan.likely.ledger)}});
    if (unit.counts.empty()) {
        values.push_back({"panels", said<"how many panels">(), {Absent{said<"not asked for">()}}});
        values.push_back(
            {"enough_panels", said<"panels that still help">(), {Absent{said<"not asked for">()}}});
        return;
    }
    values.push_back({"panels", said<"how many panels">(), counts_of(scenario, unit)});
    values.push_back({"enough_panels", said<"panels that still help">(), enough_of(unit)});
}

Value shares_or_reason(const questions::SunResults& results) {
    if (!results.unit) return {Absent{results.why_no_unit}};
    return {sun_shares(results.unit->sun.mean)};
}

Value weathers_of(const questions::SunResults& results) {
    if (results.unit) return {Absent{said<"reckoned with the members of the chance">()}};
    return value_of(results.recharge.weathers);
}

Members values_of(const Scenario& scenario, const questions::SunResults& results) {
    Members values{
        {"place", said<"place">(), {place_of(results)}},
        {"panels_now", said<"panels">(), value_of(questions::panels_in(scenario))},
        {"recharge", said<"over the whole outage">(), {range_of(results.recharge.whole)}},
        {"per_day",
         said<"for each day of the outage">(),
         {range_of(results.recharge.whole, 1.0 / outage_days(scenario))}},
        {"days", said<"day by day">(), days_of(results)},
        {"shares", said<"what becomes of it">(), shares_or_reason(results)},
        {"weathers", said<"weathers">(), weathers_of(results)},
        {"placements", said<"how to set them up">(), placements_of(results)}};
    add_unit(values, scenario, results);
    return values;
}

std::optional<words::Said> defect_of(const questions::SunResults& results) {
    constexpr double largest_residual = 1e-9;  // relative; outage/method.md (3)
    if (!results.unit ||
        std::abs(results.unit->plan.likely.ledger.relative_residual) <= largest_residual) {
        return std::nullopt;
    }
    return said<
        "the energy account does not close. Do not rely on this answer; please report it with the "
        "scenario">();
}

}  // namespace

Answer sun_answer(const Scenario& scenario, const questions::SunResults& results) {
    Answer answer{.question = "sun",
                  .title = scenario.title,
                  .sentences = sun_sentences(scenario, results),
                  .values = values_of(scenario, results),
                  .findings = sun_findings(scenario, results),
                  .working = sun_working(scenario, results),
                  .assumptions = results.setup.assumptions,
                  .cautions = cautions_for(scenario),
                  .series = sun_series(scenario, results),
                  .days = {},
                  .closing = closing_line(),
                  .defect = defect_of(results),
                  .bars = sun_bars(scenario, results)};
    if (!results.setup.groups.empty()) {
        answer.curves = sun_curves(results.day);
    }
    return answer;
}

}  // namespace answers
