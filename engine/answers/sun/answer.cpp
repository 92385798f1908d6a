#include "answers/sun/answer.hpp"

#include <algorithm>
#include <cmath>

#include <fmt/format.h>

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

namespace {

using scenario::Scenario;

template <class Written>
Value value_of(Written quantity) {
    return quantity_or_reason(shown(quantity), "the number is not finite");
}

Value value_of(int count) {
    return {static_cast<std::int64_t>(count)};
}

Value number_of(double value, int decimals) {
    return {
        Quantity{.value = value, .unit = "1", .shown = fmt::format("{:.{}f}", value, decimals)}};
}

Members range_of(const solar::DayRange& range, double share = 1.0) {
    return {{"low", "nine times in ten at least", value_of(range.low * share)},
            {"likely", "likely", value_of(range.likely * share)},
            {"high", "one time in ten more than", value_of(range.high * share)},
            {"mean", "mean", value_of(range.mean * share)}};
}

Members place_of(const questions::SunResults& results) {
    const auto& site = results.setup.site;
    return {{"name", "name", {site.name}},
            {"latitude", "latitude", value_of(site.at.latitude)},
            {"longitude", "longitude", value_of(site.at.longitude)},
            {"elevation", "elevation", value_of(site.elevation)},
            {"utc_offset", "clock ahead of UTC", value_of(site.utc_offset)},
            {"clearness", "mean clearness of the month",
             number_of(site.mean_clearness(results.day.midnight).value(), 2)},
            {"source", "known from", {site.source}}};
}

Value days_of(const questions::SunResults& results) {
    List list;
    for (std::size_t i = 0; i < results.recharge.days.size(); ++i) {
        const auto& day = results.recharge.days[i];
        Members members{{"day", "day", value_of(static_cast<int>(i) + 1)},
                        {"date", "date", {time_in_iso(day.midnight).substr(0, 10)}}};
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
        Members members{{"placement", "placement", {key_for(yield.kind)}},
                        {"stands", "stands", {stands(yield.aims)}}};
        if (yield.aims.size() == 1) {
            members.push_back({"tilt", "tilt", value_of(yield.aims.front().tilt)});
            members.push_back({"azimuth", "azimuth", value_of(yield.aims.front().azimuth)});
        }
        for (auto& member : range_of(yield.day)) {
            members.push_back(std::move(member));
        }
        const auto times = times_flat(results, yield);
        members.push_back({"times_flat", "times flat",
                           times ? number_of(*times, 2)
                                 : Value{Absent{"panels flat on the ground give nothing"}}});
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
        list.push_back(
            {Members{{"panels", "panels", value_of(count.panels)},
                     {"per_day", "kept a day", {range_of(count.sun.kept, per_day)}},
                     {"shares", "of it, a day", {sun_shares(count.sun.mean, per_day)}},
                     {"count_on", "may be counted on for", value_of(figures.count_on)},
                     {"nine_in_ten", "nine in ten last longer", value_of(figures.nine_in_ten)},
                     {"half", "half last longer", value_of(figures.half)},
                     {"one_in_ten", "one in ten lasts longer", value_of(figures.one_in_ten)},
                     {"days_gained", "days gained", number_of(days_gained(unit.counts, i), 1)},
                     {"chance", "chance of lasting", value_of(figures.of)},
                     {"members", "members run", value_of(figures.members)}}});
    }
    return {std::move(list)};
}

Value enough_of(const questions::SunAndUnit& unit) {
    const auto enough = sizing::enough_panels(unit.counts);
    if (!enough) {
        return {Absent{
            fmt::format("each further panel up to {} still helps", unit.counts.back().panels)}};
    }
    return {Members{{"panels", "panels", value_of(enough->panels)},
                    {"limited_by", "beyond that, limited by", {key_for(enough->why)}},
                    {"why", "why", {why_in_words(enough->why)}}}};
}

// Of the likely course, apart: what the panels could give, and where it stayed.
Members energy_of(const outage::Ledger& ledger) {
    return {{"offered", "offered at the battery", value_of(ledger.sun_offered)},
            {"used", "straight into loads", value_of(ledger.sun_used)},
            {"stored", "into the packs", value_of(ledger.sun_stored)},
            {"charging_loss", "of it not stored in charging", value_of(ledger.charging_loss)},
            {"unused", "not taken", value_of(ledger.sun_unused)},
            {"clipped", "turned away by the controller", value_of(ledger.sun_clipped)}};
}

void add_unit(Members& values, const Scenario& scenario, const questions::SunResults& results) {
    if (!results.unit) {
        for (const auto& [key, label] :
             {std::pair{"lasts", "lasts"}, std::pair{"chance_of_lasting", "chance of lasting"},
              std::pair{"energy", "energy"}, std::pair{"panels", "how many panels"},
              std::pair{"enough_panels", "panels that still help"}}) {
            values.push_back({key, label, {Absent{results.why_no_unit}}});
        }
        return;
    }
    const auto& unit = *results.unit;
    const auto& figures = unit.figures;
    values.push_back(
        {"lasts",
         "lasts, over all that is not known",
         {Members{{"count_on", "may be counted on for", value_of(figures.count_on)},
                  {"nine_in_ten", "nine in ten last longer", value_of(figures.nine_in_ten)},
                  {"half", "half last longer", value_of(figures.half)},
                  {"one_in_ten", "one in ten lasts longer", value_of(figures.one_in_ten)},
                  {"members", "members run", value_of(figures.members)}}}});
    values.push_back({"chance_of_lasting", "chance of lasting", value_of(figures.of)});
    values.push_back(
        {"energy", "sun, over the likely course", {energy_of(unit.plan.likely.ledger)}});
    if (unit.counts.empty()) {
        values.push_back({"panels", "how many panels", {Absent{"not asked for"}}});
        values.push_back({"enough_panels", "panels that still help", {Absent{"not asked for"}}});
        return;
    }
    values.push_back({"panels", "how many panels", counts_of(scenario, unit)});
    values.push_back({"enough_panels", "panels that still help", enough_of(unit)});
}

Value shares_or_reason(const questions::SunResults& results) {
    if (!results.unit) return {Absent{results.why_no_unit}};
    return {sun_shares(results.unit->sun.mean)};
}

Value weathers_of(const questions::SunResults& results) {
    if (results.unit) return {Absent{"reckoned with the members of the chance"}};
    return value_of(results.recharge.weathers);
}

Members values_of(const Scenario& scenario, const questions::SunResults& results) {
    Members values{{"place", "place", {place_of(results)}},
                   {"panels_now", "panels", value_of(questions::panels_in(scenario))},
                   {"recharge", "over the whole outage", {range_of(results.recharge.whole)}},
                   {"per_day",
                    "for each day of the outage",
                    {range_of(results.recharge.whole, 1.0 / outage_days(scenario))}},
                   {"days", "day by day", days_of(results)},
                   {"shares", "what becomes of it", shares_or_reason(results)},
                   {"weathers", "weathers", weathers_of(results)},
                   {"placements", "other ways to stand", placements_of(results)}};
    add_unit(values, scenario, results);
    return values;
}

std::optional<std::string> defect_of(const questions::SunResults& results) {
    constexpr double largest_residual = 1e-9;  // relative; outage/method.md (3)
    if (!results.unit ||
        std::abs(results.unit->plan.likely.ledger.relative_residual) <= largest_residual) {
        return std::nullopt;
    }
    return "the energy account does not close. Do not rely on this answer; please report it with "
           "the scenario";
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
                  .closing = std::string(closing_line),
                  .defect = defect_of(results),
                  .bars = sun_bars(scenario, results)};
    if (!results.setup.groups.empty()) {
        answer.curves = sun_curves(results.day);
    }
    return answer;
}

}  // namespace answers
