#include "answers/outage/answer.hpp"

#include <algorithm>
#include <cmath>

#include "answers/cautions.hpp"
#include "answers/clock_words.hpp"
#include "answers/outage/findings.hpp"
#include "answers/outage/sentences.hpp"
#include "answers/outage/series.hpp"
#include "answers/outage/working.hpp"
#include "answers/shown.hpp"
#include "answers/sun/shares.hpp"
#include "sizing/builds/builds.hpp"

namespace answers {

namespace {

using outage::Course;
using outage::Ledger;
using outage::MorePacks;
using outage::Plan;
using scenario::Scenario;
using words::Said;
using words::said;

template <class Written>
Value value_of(Written quantity) {
    return quantity_or_reason(shown(quantity), said<"the number is not finite">());
}

Members ending(const Scenario& scenario, units::Duration lasts, bool survives) {
    return {{.key = "lasts", .label = said<"lasts">(), .value = value_of(lasts)},
            {.key = "ends_at",
             .label = said<"until">(),
             .value = time_value(scenario.outage.starts + lasts)},
            {.key = "survives", .label = said<"lasts the whole outage">(), .value = {survives}}};
}

// Members in the order in which a person follows energy through the unit.
Members energy(const Ledger& ledger) {
    return {
        {"stored_at_start", said<"stored at the start">(), value_of(ledger.stored_at_start)},
        {"sun_offered", said<"offered by the sun">(), value_of(ledger.sun_offered)},
        {"sun_used", said<"sun straight into loads">(), value_of(ledger.sun_used)},
        {"sun_stored", said<"sun into the packs">(), value_of(ledger.sun_stored)},
        {"sun_unused", said<"sun not taken">(), value_of(ledger.sun_unused)},
        {"sun_clipped", said<"turned away by the controller">(), value_of(ledger.sun_clipped)},
        {"charger_offered", said<"offered by chargers">(), value_of(ledger.charger_offered)},
        {"charger_taken", said<"taken from chargers">(), value_of(ledger.charger_taken)},
        {"charger_unused", said<"from chargers, not taken">(), value_of(ledger.charger_unused)},
        {"loads", said<"to the loads">(), value_of(ledger.loads)},
        {"inverter_loss", said<"lost in the inverter">(), value_of(ledger.inverter_loss)},
        {"idle", said<"of it with nothing plugged in">(), value_of(ledger.idle)},
        {"converter_loss", said<"lost in adaptors">(), value_of(ledger.converter_loss)},
        {"wiring_loss", said<"lost in the wiring">(), value_of(ledger.wiring_loss)},
        {"battery_loss", said<"lost in the packs">(), value_of(ledger.battery_loss)},
        {"charging_loss", said<"of it not stored in charging">(), value_of(ledger.charging_loss)},
        {"stored_at_end", said<"stored at the end">(), value_of(ledger.stored_at_end)},
        {"unserved", said<"wanted and not served">(), value_of(ledger.unserved)},
        {"residual", said<"not explained">(), value_of(ledger.residual)}};
}

Value next_packs(const Scenario& scenario, const Plan& plan, const std::vector<MorePacks>& more) {
    if (more.empty()) {
        return {Absent{plan.likely.survives ? said<"it lasts the whole outage as it is">()
                                            : said<"more packs were not tried">()}};
    }
    List list;
    for (const auto& entry : more) {
        Members members = ending(scenario, entry.lasts, entry.survives);
        members.insert(
            members.begin(),
            {"packs", said<"packs together">(), {static_cast<std::int64_t>(entry.packs)}});
        list.push_back({std::move(members)});
    }
    return {std::move(list)};
}

void add_more_packs(Members& values, const questions::OutageChance& told) {
    const Said label = said<"more packs, for the chance that is asked for">();
    if (!told.more || told.more->more == 0) {
        const Absent reason{
            told.more ? said<"up to {n} more packs do not make it sure enough">(told.more->tried)
                      : said<"it is as sure as is asked for">()};
        values.push_back({"more_packs", label, {reason}});
        return;
    }
    values.push_back(
        {"more_packs",
         label,
         {Members{{"more", said<"more">(), {std::int64_t(told.more->more)}},
                  {"packs", said<"packs in all">(), {std::int64_t(told.packs + told.more->more)}},
                  {"chance", said<"chance">(), value_of(told.more->of)}}}});
}

Said likely_only() {
    return said<"only the course on likely figures was run; ask with {option}">("--members 256");
}

void add_chance(Members& values, const Scenario& scenario,
                const std::optional<questions::OutageChance>& told) {
    if (!told) {
        const Absent reason{likely_only()};
        for (const auto& [key, label] :
             {std::pair{"chance", said<"chance to the end">()},
              std::pair{"count_on", said<"may be counted on">()},
              std::pair{"over_chances", said<"over all that is not known">()},
              std::pair{"corner", said<"if everything turns out badly, or well">()},
              std::pair{"chance_of_lasting", said<"chance of lasting">()}})
            values.push_back({key, label, {reason}});
        return;
    }
    const chance::Figures& figures = told->figures;
    values.push_back({"chance",
                      said<"chance to the end">(),
                      {Members{{"of", said<"chance">(), value_of(figures.of)},
                               {"low", said<"at least, 19 times in 20">(), value_of(figures.low)},
                               {"high", said<"at most, 19 times in 20">(), value_of(figures.high)},
                               {"members", said<"members run">(), {std::int64_t(figures.members)}},
                               {"effective",
                                said<"as many of equal weight">(),
                                {std::int64_t(std::lround(figures.effective))}}}}});
    Members count_on = ending(scenario, figures.count_on, figures.meets_the_goal());
    count_on.insert(count_on.begin(),
                    {"chance", said<"with a chance of">(), value_of(figures.goal)});
    values.push_back({"count_on", said<"may be counted on">(), {std::move(count_on)}});
    values.push_back(
        {"over_chances",
         said<"over all that is not known">(),
         {Members{
             {"nine_in_ten", said<"nine in ten last longer">(), value_of(figures.nine_in_ten)},
             {"half", said<"half last longer">(), value_of(figures.half)},
             {"one_in_ten", said<"one in ten lasts longer">(), value_of(figures.one_in_ten)}}}});
    values.push_back({"chance_of_lasting", said<"chance of lasting">(), value_of(figures.of)});
    values.push_back(
        {"corner",
         said<"if everything turns out badly, or well">(),
         {Members{
             {"bad", said<"badly">(), {ending(scenario, told->bad.lasts, told->bad.survives)}},
             {"good", said<"well">(), {ending(scenario, told->good.lasts, told->good.survives)}}}},
         true});
    add_more_packs(values, *told);
}

Members range_of(const solar::DayRange& range, double share = 1.0) {
    return {{"low", said<"nine times in ten at least">(), value_of(range.low * share)},
            {"likely", said<"likely">(), value_of(range.likely * share)},
            {"high", said<"one time in ten more than">(), value_of(range.high * share)},
            {"mean", said<"mean">(), value_of(range.mean * share)}};
}

void add_recharge(Members& values, const Scenario& scenario,
                  const std::optional<questions::OutageChance>& chance) {
    if (!chance || !chance->sun) {
        const Absent reason{scenario.panels.empty() ? said<"there are no panels">()
                                                    : likely_only()};
        values.push_back({"recharge", said<"from the sun, taken and kept">(), {reason}});
        return;
    }
    const auto& sun = *chance->sun;
    const double days = std::max<double>(scenario.outage.lasts / units::day, 1e-6);
    values.push_back(
        {"recharge",
         said<"from the sun, taken and kept">(),
         {Members{{"whole", said<"the whole outage">(), {range_of(sun.kept)}},
                  {"per_day", said<"each day">(), {range_of(sun.kept, 1.0 / days)}},
                  {"shares", said<"what becomes of it, on average">(), {sun_shares(sun.mean)}},
                  {"members", said<"members run">(), {static_cast<std::int64_t>(sun.members)}}}}});
}

Value crossing(const Scenario& scenario, const Course& course) {
    if (!course.crosses_usable_at) return {Absent{said<"the usable share is not used up">()}};
    return time_value(scenario.outage.starts + *course.crosses_usable_at);
}

Value ladder(const Scenario& scenario, const Plan& plan) {
    List steps;
    for (const auto& step : plan.ladder) {
        Members members = ending(scenario, step.lasts, step.survives);
        members.insert(members.begin(),
                       {"priority", said<"up to priority">(), {std::int64_t(step.priority)}});
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
                {Members{{"from", said<"from">(), time_value(scenario.outage.starts + gap.from)},
                         {"to", said<"to">(), time_value(scenario.outage.starts + gap.to)},
                         {"why", said<"because">(), {code_of(gap.why)}}}});
        }
        loads.push_back({Members{{"name", said<"load">(), {load.name}},
                                 {"wanted_for", said<"wanted for">(), value_of(load.on_time)},
                                 {"fed", said<"fed for">(), value_of(load.fed)},
                                 {"goes_without", said<"goes without">(), {std::move(gaps)}}}});
    }
    return {std::move(loads)};
}

// Where nobody knows how long the outage lasts.
void add_open_end(Members& values, const scenario::Outage& outage) {
    if (!outage.open_ended) return;
    values.push_back(
        {"outage",
         said<"the outage">(),
         {Members{{"lasts", said<"lasts">(), {std::string("?")}},
                  {"half_over_by", said<"half are over by">(), value_of(*outage.half_over_by)},
                  {"looked_at", said<"looked at for">(), value_of(outage.lasts)}}}});
}

Members values_of(const Scenario& scenario, const Plan& plan, const std::vector<MorePacks>& more,
                  const std::optional<questions::OutageChance>& chance) {
    const Course& likely = plan.likely;
    Members values = ending(scenario, likely.lasts, likely.survives);
    values.push_back({"limited_by", said<"what ends it">(), {code_of(likely.limited_by)}});
    values.push_back(
        {"crosses_usable_at", said<"uses up the usable share at">(), crossing(scenario, likely)});
    values.push_back(
        {"ladder", said<"with the loads up to a priority alone">(), ladder(scenario, plan)});
    values.push_back({"per_load", said<"load by load">(), per_load(scenario, plan)});
    values.push_back({"energy", said<"energy">(), {energy(likely.ledger)}});
    add_open_end(values, scenario.outage);
    add_chance(values, scenario, chance);
    add_recharge(values, scenario, chance);
    values.push_back({"packs", said<"packs">(), {static_cast<std::int64_t>(plan.packs)}});
    values.push_back({"next_packs", said<"with more packs">(), next_packs(scenario, plan, more)});
    values.push_back(
        {"usable_at_start", said<"left to use at the start">(), value_of(plan.usable_at_start)});
    values.push_back(
        {"charge_at_end", said<"how full at the end">(), value_of(likely.trace.back().charge)});
    values.push_back(
        {"without", said<"time in which something goes without">(), value_of(likely.without)});
    values.push_back({"lowest_voltage", said<"lowest voltage">(), value_of(likely.lowest_voltage)});
    values.push_back({"highest_pack_current", said<"highest current of a pack">(),
                      value_of(likely.highest_pack_current)});
    return values;
}

// The account must close to rounding; more is a fault in the program, not in the scenario.
constexpr double largest_residual = 1e-9;  // relative; outage/method.md

std::optional<Said> defect_of(const Plan& plan) {
    for (const auto* course : {&plan.likely, &plan.earliest, &plan.latest}) {
        const double residual = std::abs(course->ledger.relative_residual);
        if (!(residual <= largest_residual)) {
            return said<
                "the energy account does not close: {share} of it is not explained. Do not "
                "rely on this answer; please report it with the scenario">(
                words::Number{.value = residual, .digits = 2});
        }
    }
    return std::nullopt;
}

const std::optional<sizing::Fan> no_fan;

// The chance, then what becomes of each load.
std::vector<words::Said> chance_and_course(const Scenario& scenario, const Plan& plan,
                                           const questions::OutageChance& chance) {
    auto sentences = chance_sentences(scenario.outage, chance);
    for (auto& sentence : course_sentences(scenario, plan))
        sentences.push_back(std::move(sentence));
    return sentences;
}

// In two columns; what chargers give, and what adaptors lose of it, where there are any.
Account account_of(const Ledger& ledger) {
    const auto entry = [](Said label, units::Energy energy) {
        return Account::Entry{std::move(label), shown(energy)};
    };
    Account account{.from = {entry(said<"stored at the start">(), ledger.stored_at_start),
                             entry(said<"sun into loads">(), ledger.sun_used),
                             entry(said<"sun into packs">(), ledger.sun_stored),
                             entry(said<"sun not taken">(), ledger.sun_unused)},
                    .to = {entry(said<"to the loads">(), ledger.loads),
                           entry(said<"lost in the inverter">(), ledger.inverter_loss),
                           entry(said<"lost in the wiring">(), ledger.wiring_loss),
                           entry(said<"lost in the packs">(), ledger.battery_loss)}};
    if (ledger.charger_offered > units::Energy{}) {
        account.from.push_back(entry(said<"from chargers">(), ledger.charger_taken));
        account.to.push_back(entry(said<"lost in adaptors">(), ledger.converter_loss));
    }
    account.from.push_back(entry(said<"not served">(), ledger.unserved));
    account.to.push_back(entry(said<"stored at the end">(), ledger.stored_at_end));
    return account;
}

DaysChart::Burns burns_of(const Plan& plan, const std::optional<questions::OutageChance>& chance) {
    const auto in_hours = [](units::Duration time) { return double(time / units::hour); };
    if (!chance) {
        const double lasts = in_hours(plan.likely.lasts);
        return {lasts, lasts, lasts};
    }
    const auto& figures = chance->figures;
    return {in_hours(figures.nine_in_ten), in_hours(figures.half), in_hours(figures.one_in_ten)};
}

const std::optional<sizing::SunReturn> no_sun;

std::optional<units::Duration> lasts_at_best(const std::optional<questions::OutageChance>& chance) {
    return chance ? std::optional(chance->figures.one_in_ten) : std::nullopt;
}

Said recharge_sentence(const Scenario& scenario, const sizing::SunReturn& sun) {
    const double days = std::max<double>(scenario.outage.lasts / units::day, 1.0);
    return said<"The panels give back {likely} a day, {low} to {high} four times in five.">(
        in_words(sun.kept.likely / days, 2), in_words(sun.kept.low / days, 2),
        in_words(sun.kept.high / days, 2));
}

}  // namespace

Answer outage_answer(const Scenario& scenario, const Plan& plan, const std::vector<MorePacks>& more,
                     const std::optional<questions::OutageChance>& chance,
                     const questions::OutageStarts& starts) {
    const auto& fan = chance ? chance->fan : no_fan;
    const auto& sun = chance ? chance->sun : no_sun;
    Answer answer{.question = "outage",
                  .title = scenario.title,
                  .sentences = chance ? chance_and_course(scenario, plan, *chance)
                                      : outage_sentences(scenario, plan, more),
                  .values = values_of(scenario, plan, more, chance),
                  .findings = outage_findings(scenario, plan, starts),
                  .working = outage_working(plan),
                  .assumptions = plan.assumptions,
                  .cautions = cautions_for(scenario),
                  .series = outage_series(scenario, plan, sun, fan),
                  .days = days_chart(scenario, plan, fan, lasts_at_best(chance)),
                  .closing = closing_line(),
                  .defect = defect_of(plan),
                  .account = account_of(plan.likely.ledger)};
    answer.days->burns = burns_of(plan, chance);
    if (scenario.outage.open_ended)
        answer.days->looked_at = double(scenario.outage.lasts / units::hour);
    const Ledger& ledger = plan.likely.ledger;
    if (ledger.charger_offered > units::Energy{}) {
        answer.sentences.push_back(said<"Chargers give {taken} of the {offered} they offer.">(
            in_words(ledger.charger_taken), in_words(ledger.charger_offered)));
    }
    if (sun && sun->kept.high > 1.0 * units::watt_hour) {
        answer.sentences.push_back(recharge_sentence(scenario, *sun));
    }
    return answer;
}

}  // namespace answers
