#include "report/outage_answer.hpp"

#include <algorithm>
#include <cmath>

#include <fmt/format.h>

#include "report/cautions.hpp"
#include "report/clock_words.hpp"
#include "report/outage_findings.hpp"
#include "report/outage_sentences.hpp"
#include "report/outage_series.hpp"
#include "report/outage_working.hpp"
#include "report/shown.hpp"
#include "report/start_dates_chance.hpp"
#include "sizing/builds.hpp"

namespace report {

namespace {

using outage::Course;
using outage::Ledger;
using outage::MorePacks;
using outage::Plan;
using scenario::Scenario;

template <class Written>
Value value_of(Written quantity) {
    return quantity_or_reason(shown(quantity), "the number is not finite");
}

Members ending(const Scenario& scenario, units::Duration lasts, bool survives) {
    return {{.key = "lasts", .label = "lasts", .value = value_of(lasts)},
            {.key = "ends_at",
             .label = "until",
             .value = {time_in_iso(scenario.outage.starts + lasts)}},
            {.key = "survives", .label = "lasts the whole outage", .value = {survives}}};
}

// Members in the order in which a person follows energy through the unit.
Members energy(const Ledger& ledger) {
    return {{"stored_at_start", "stored at the start", value_of(ledger.stored_at_start)},
            {"sun_offered", "offered by the sun", value_of(ledger.sun_offered)},
            {"sun_used", "sun straight into loads", value_of(ledger.sun_used)},
            {"sun_stored", "sun into the packs", value_of(ledger.sun_stored)},
            {"sun_unused", "sun not taken", value_of(ledger.sun_unused)},
            {"sun_clipped", "turned away by the controller", value_of(ledger.sun_clipped)},
            {"charger_offered", "offered by chargers", value_of(ledger.charger_offered)},
            {"charger_taken", "taken from chargers", value_of(ledger.charger_taken)},
            {"charger_unused", "from chargers, not taken", value_of(ledger.charger_unused)},
            {"loads", "to the loads", value_of(ledger.loads)},
            {"inverter_loss", "lost in the inverter", value_of(ledger.inverter_loss)},
            {"idle", "of it with nothing plugged in", value_of(ledger.idle)},
            {"converter_loss", "lost in adaptors", value_of(ledger.converter_loss)},
            {"wiring_loss", "lost in the wiring", value_of(ledger.wiring_loss)},
            {"battery_loss", "lost in the packs", value_of(ledger.battery_loss)},
            {"charging_loss", "of it not stored in charging", value_of(ledger.charging_loss)},
            {"stored_at_end", "stored at the end", value_of(ledger.stored_at_end)},
            {"unserved", "wanted and not served", value_of(ledger.unserved)},
            {"residual", "not explained", value_of(ledger.residual)}};
}

Value next_packs(const Scenario& scenario, const Plan& plan, const std::vector<MorePacks>& more) {
    if (more.empty()) {
        return {Absent{plan.likely.survives ? "it lasts the whole outage as it is"
                                            : "more packs were not tried"}};
    }
    List list;
    for (const auto& entry : more) {
        Members members = ending(scenario, entry.lasts, entry.survives);
        members.insert(members.begin(),
                       {"packs", "packs together", {static_cast<std::int64_t>(entry.packs)}});
        list.push_back({std::move(members)});
    }
    return {std::move(list)};
}

void add_chances(Members& values, const std::optional<Chances>& chances) {
    if (!chances) {
        const Absent reason{"one course of weather was run, not many; ask with --weathers 200"};
        values.push_back({"likely", "over many weathers", {reason}});
        values.push_back({"chance_of_lasting", "chance of lasting", {reason}});
        return;
    }
    values.push_back(
        {"likely",
         "over many weathers",
         {Members{{"p10", "nine in ten last longer", value_of(chances->p10)},
                  {"p50", "half last longer", value_of(chances->p50)},
                  {"p90", "one in ten lasts longer", value_of(chances->p90)},
                  {"outages", "outages tried", {static_cast<std::int64_t>(chances->outages)}}}}});
    values.push_back({"chance_of_lasting", "chance of lasting", value_of(chances->of_lasting)});
    values.push_back({"chance_low", "at least, 19 times in 20", value_of(chances->low)});
    values.push_back({"chance_high", "at most, 19 times in 20", value_of(chances->high)});
    if (chances->surer && chances->surer->more > 0)
        values.push_back({"surer_packs",
                          "more packs, for the chance that is asked for",
                          {Members{{"more", "more", {std::int64_t(chances->surer->more)}},
                                   {"chance", "chance", value_of(chances->surer->of_lasting)}}}});
}

Members range_of(const solar::DayRange& range, double share = 1.0) {
    return {{"low", "nine times in ten at least", value_of(range.low * share)},
            {"likely", "likely", value_of(range.likely * share)},
            {"high", "one time in ten more than", value_of(range.high * share)},
            {"mean", "mean", value_of(range.mean * share)}};
}

void add_recharge(Members& values, const Scenario& scenario,
                  const std::optional<solar::Recharge>& recharge) {
    if (!recharge) {
        values.push_back({"recharge", "sun over many weathers", {Absent{"there are no panels"}}});
        return;
    }
    const double days = std::max<double>(scenario.outage.lasts / units::day, 1e-6);
    values.push_back(
        {"recharge",
         "sun over many weathers",
         {Members{
             {"whole", "the whole outage", {range_of(recharge->whole)}},
             {"per_day", "each day", {range_of(recharge->whole, 1.0 / days)}},
             {"weathers", "weathers tried", {static_cast<std::int64_t>(recharge->weathers)}}}}});
}

Value crossing(const Scenario& scenario, const Course& course) {
    if (!course.crosses_usable_at) return {Absent{"the usable share is not used up"}};
    return {time_in_iso(scenario.outage.starts + *course.crosses_usable_at)};
}

Value ladder(const Scenario& scenario, const Plan& plan) {
    List steps;
    for (const auto& step : plan.ladder) {
        Members members = ending(scenario, step.lasts, step.survives);
        members.insert(members.begin(),
                       {"priority", "up to priority", {std::int64_t(step.priority)}});
        steps.push_back({std::move(members)});
    }
    return {std::move(steps)};
}

// The first of a load's gaps: a course of months may have many.
Value per_load(const Scenario& scenario, const Plan& plan) {
    constexpr std::size_t most_gaps = 200;
    List loads;
    for (const auto& load : plan.loads) {
        List gaps;
        for (const auto& gap : load.goes_without) {
            if (gaps.size() == most_gaps) break;
            gaps.push_back(
                {Members{{"from", "from", {time_in_iso(scenario.outage.starts + gap.from)}},
                         {"to", "to", {time_in_iso(scenario.outage.starts + gap.to)}},
                         {"why", "why", {std::string(word_for(gap.why))}}}});
        }
        loads.push_back({Members{{"name", "load", {load.name}},
                                 {"wanted_for", "wanted for", value_of(load.on_time)},
                                 {"fed", "fed for", value_of(load.fed)},
                                 {"goes_without", "goes without", {std::move(gaps)}}}});
    }
    return {std::move(loads)};
}

Members values_of(const Scenario& scenario, const Plan& plan, const std::vector<MorePacks>& more,
                  const std::optional<Chances>& chances,
                  const std::optional<solar::Recharge>& recharge) {
    const Course& likely = plan.likely;
    Members values = ending(scenario, likely.lasts, likely.survives);
    values.push_back({"limited_by", "limited by", {std::string(word_for(likely.limited_by))}});
    values.push_back(
        {"crosses_usable_at", "uses up the usable share at", crossing(scenario, likely)});
    values.push_back({"ladder", "with the loads up to a priority alone", ladder(scenario, plan)});
    values.push_back({"per_load", "load by load", per_load(scenario, plan)});
    values.push_back({"earliest",
                      "if every doubtful figure turns out badly",
                      {ending(scenario, plan.earliest.lasts, plan.earliest.survives)}});
    values.push_back({"latest",
                      "if every doubtful figure turns out well",
                      {ending(scenario, plan.latest.lasts, plan.latest.survives)}});
    values.push_back({"energy", "energy", {energy(likely.ledger)}});
    add_chances(values, chances);
    add_recharge(values, scenario, recharge);
    values.push_back({"packs", "packs", {static_cast<std::int64_t>(plan.packs)}});
    values.push_back({"next_packs", "with more packs", next_packs(scenario, plan, more)});
    values.push_back(
        {"usable_at_start", "left to use at the start", value_of(plan.usable_at_start)});
    values.push_back(
        {"charge_at_end", "how full at the end", value_of(likely.trace.back().charge)});
    values.push_back({"without", "time in which something goes without", value_of(likely.without)});
    values.push_back({"lowest_voltage", "lowest voltage", value_of(likely.lowest_voltage)});
    values.push_back({"highest_pack_current", "highest current of a pack",
                      value_of(likely.highest_pack_current)});
    return values;
}

// The account must close to rounding; more is a fault in the program, not in the scenario.
constexpr double largest_residual = 1e-9;  // relative; outage/method.md

std::optional<std::string> defect_of(const Plan& plan) {
    for (const auto* course : {&plan.likely, &plan.earliest, &plan.latest}) {
        const double residual = std::abs(course->ledger.relative_residual);
        if (!(residual <= largest_residual)) {
            return fmt::format(
                "the energy account does not close: {:.2g} of it is not explained. "
                "Do not rely on this answer; please report it with the scenario",
                residual);
        }
    }
    return std::nullopt;
}

}  // namespace

namespace {

std::string with_surer_packs(const Chances& chances) {
    if (!chances.surer) return "";
    const auto& surer = *chances.surer;
    if (surer.more == 0)
        return fmt::format("; up to {} more packs do not make it sure enough", surer.tried);
    return fmt::format("; {} more {} through {:.0f} %", number_in_words(surer.more),
                       surer.more == 1 ? "pack lasts" : "packs last",
                       std::floor(100.0 * surer.of_lasting.value()));
}

}  // namespace

std::string chance_sentence(const Chances& chances) {
    const double percent = 100.0 * chances.of_lasting.value();
    const std::string spread =
        fmt::format("{:.0f} to {:.0f} in a hundred", std::floor(100.0 * chances.low.value()),
                    std::ceil(100.0 * chances.high.value()));
    const std::string more = with_surer_packs(chances);
    if (chances.of_lasting <= units::Probability(0.0)) {
        return fmt::format("It lasts through none of {} {}{}.", chances.outages, chances.of, more);
    }
    if (chances.of_lasting >= units::Probability(1.0)) {
        return fmt::format("It lasts through all of {} {} ({}).", chances.outages, chances.of,
                           spread);
    }
    return fmt::format("Of {} {} it lasts through {:.0f} % ({}){}.", chances.outages, chances.of,
                       std::floor(percent), spread, more);
}

namespace {

std::string recharge_sentence(const Scenario& scenario, const solar::Recharge& recharge) {
    const double days = std::max<double>(scenario.outage.lasts / units::day, 1.0);
    return fmt::format("The panels give back {} a day, {} to {} four times in five.",
                       in_words(recharge.whole.likely / days, 2),
                       in_words(recharge.whole.low / days, 2),
                       in_words(recharge.whole.high / days, 2));
}

}  // namespace

Chances chances_of(std::vector<outage::Ending> endings) {
    std::vector<units::Duration> lasts;
    int lasted = 0;
    for (const auto& ending : endings) {
        lasts.push_back(ending.lasts);
        lasted += ending.survives ? 1 : 0;
    }
    const auto chance = sizing::counted(lasted, static_cast<int>(endings.size()));
    const auto spread = sizing::spread_of(lasts);
    return {.p10 = spread.p10,
            .p50 = spread.p50,
            .p90 = spread.p90,
            .of_lasting = chance.of,
            .low = chance.low,
            .high = chance.high,
            .outages = chance.outages};
}

Chances chances_in_weathers(const Scenario& scenario, const outage::Ready& ready, int weathers,
                            std::uint64_t seed) {
    constexpr int most_more = 12;
    constexpr std::size_t few_weathers = 64;
    if (!ready.sky) return chances_of(outage::endings_in_weathers(ready, weathers, seed));
    int panels = 0;
    for (const auto& group : ready.sky->groups)
        panels += group.count;
    const int packs = outage::count_of(ready.kinds);
    const auto design =
        sizing::design_of(std::make_shared<const outage::Ready>(ready), packs + most_more, panels);
    auto suns = sizing::suns_in(design, panels, 0, std::min(weathers, design.most_weathers), seed);
    std::vector<outage::Ending> endings;
    for (const auto& ending : sizing::endings_under(design, packs, suns))
        endings.push_back({.lasts = ending.lasts, .survives = ending.survives});
    auto chances = chances_of(std::move(endings));
    if (ready.sky->hours) chances = of_start_dates(std::move(chances), ready.outage.lasts);
    const auto goal = sizing::goal_of(scenario);
    if (chances.of_lasting >= goal) return chances;
    // Packs that differ are run one by one: under the first few of these weathers.
    if (!design.all_alike() && suns.size() > few_weathers) suns.resize(few_weathers);
    const auto enough = sizing::fewest_packs(design, packs + 1, goal, suns);
    chances.surer = SurerPacks{.more = enough ? enough->packs - packs : 0,
                               .tried = most_more,
                               .of_lasting = enough ? enough->chance.of : units::Probability{}};
    return chances;
}

Answer outage_answer(const Scenario& scenario, const Plan& plan, const std::vector<MorePacks>& more,
                     const std::optional<Chances>& chances,
                     const std::optional<solar::Recharge>& recharge) {
    Answer answer{.question = "outage",
                  .title = scenario.title,
                  .sentences = outage_sentences(scenario, plan, more),
                  .values = values_of(scenario, plan, more, chances, recharge),
                  .findings = outage_findings(scenario, plan),
                  .working = outage_working(plan),
                  .assumptions = plan.assumptions,
                  .cautions = cautions_for(scenario),
                  .series = outage_series(scenario, plan, recharge),
                  .days = days_chart(scenario, plan),
                  .closing = std::string(closing_line),
                  .defect = defect_of(plan)};
    const Ledger& ledger = plan.likely.ledger;
    if (ledger.charger_offered > units::Energy{}) {
        answer.sentences.push_back(fmt::format("Chargers give {} of the {} they offer.",
                                               in_words(ledger.charger_taken),
                                               in_words(ledger.charger_offered)));
    }
    if (chances && chances->outages > 1) {
        answer.sentences.push_back(chance_sentence(*chances));
    }
    if (recharge && recharge->whole.high > 1.0 * units::watt_hour) {
        answer.sentences.push_back(recharge_sentence(scenario, *recharge));
    }
    return answer;
}

}  // namespace report
