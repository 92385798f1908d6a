#include "answers/start/answer.hpp"

#include <algorithm>

#include "answers/cautions.hpp"
#include "answers/shown.hpp"
#include "answers/start/chart.hpp"
#include "answers/start/series.hpp"
#include "answers/start/words.hpp"

namespace answers {

using starting::Constraint;
using starting::Judgement;
using starting::LoadStart;
using starting::StartPlan;
using starting::StartVerdict;
using words::Said;
using words::said;

namespace {

Said not_finite() {
    return said<"the number is not finite">();
}

Value code(StartVerdict verdict) {
    return {Code{std::string(starting::name_of(verdict)), plain(verdict)}};
}

Value code(Constraint constraint) {
    return {Code{std::string(starting::name_of(constraint)), starting::in_words(constraint)}};
}

template <class Written>
Value value_of(Written quantity) {
    if constexpr (std::is_same_v<Written, units::Duration>) {
        return quantity_or_reason(shown_in_seconds(quantity), not_finite());
    } else {
        return quantity_or_reason(shown(quantity), not_finite());
    }
}

template <class Written>
Value range_of(const units::Ends<Written>& ends) {
    const auto range = units::spanning(ends);
    return {Members{{"low", said<"at least">(), value_of(range.low())},
                    {"likely", said<"likely">(), value_of(range.likely())},
                    {"high", said<"at most">(), value_of(range.high())}}};
}

Quantity share_of_limit(starting::Utilised used) {
    return {.value = used.value(), .unit = "1", .shown = in_percent(used)};
}

Value utilisation_of(const Judgement& judged) {
    Members members;
    for (const auto& use : judged.used)
        members.push_back(
            {std::string(starting::name_of(use.constraint)),
             starting::in_words(use.constraint),
             {Members{{"low", said<"at least">(), {share_of_limit(use.used.low())}},
                      {"likely", said<"likely">(), {share_of_limit(use.used.likely())}},
                      {"high", said<"at most">(), {share_of_limit(use.used.high())}}}}});
    return {std::move(members)};
}

Value needed_of(const starting::PacksNeeded& packs, int now) {
    if (packs.surely) return {static_cast<std::int64_t>(*packs.surely)};
    return {Absent{packs_in_words(packs, now)}};
}

Value time_of(const LoadStart& start) {
    if (start.on_the_bus || start.refused)
        return {Absent{start.refused ? said<"it is not switched on at all">()
                                     : said<"a 12 V motor has no such curve here">()}};
    const Value never{Absent{said<"it does not come up to speed">()}};
    if (!start.run_up.low.comes_up) return never;
    Members members{{"low", said<"at least">(), value_of(start.run_up.low.time)}};
    const auto add = [&](const char* key, Said label, const starting::RunUp& run_up) {
        members.push_back({key, std::move(label), run_up.comes_up ? value_of(run_up.time) : never});
    };
    add("likely", said<"likely">(), start.run_up.likely);
    add("high", said<"at most">(), start.run_up.high);
    return {std::move(members)};
}

void add_judgement(Members& members, const Judgement& judged) {
    members.push_back({"verdict", said<"verdict">(), code(judged.verdict)});
    members.push_back({"binding", said<"what binds">(), code(judged.binding)});
    if (judged.used.empty()) return;
    members.push_back({"utilisation", said<"share of each limit used">(), utilisation_of(judged)});
    members.push_back(
        {"apparent_power", said<"asked of the inverter">(), range_of(judged.draw.apparent)});
    members.push_back({"plain_sum_of_volt_amperes", said<"its volt-amperes added as they stand">(),
                       value_of(judged.draw.plain_sum)});
    members.push_back(
        {"dc_power", said<"asked of the packs">(), range_of(judged.draw.direct_power)});
    members.push_back({"voltage", said<"voltage at the inverter">(), range_of(judged.voltage)});
    members.push_back({"current", said<"current of all packs">(), range_of(judged.current)});
    members.push_back({"current_per_pack", said<"current of the pack nearest its limit">(),
                       range_of(judged.pack_current)});
}

Value what_ifs_of(const LoadStart& start) {
    List list;
    for (const auto& what_if : start.what_ifs)
        list.push_back({Members{{"change", said<"what if">(), {what_if.change}},
                                {"verdict", said<"verdict">(), code(what_if.verdict)},
                                {"binding", said<"bound by">(), code(what_if.binding)}}});
    return {std::move(list)};
}

Members values_of(const LoadStart& start, int packs_now) {
    Members members{{"name", said<"load">(), {start.name}}};
    add_judgement(members, start.judged);
    members.push_back({"time_to_speed", said<"time to speed">(), time_of(start)});
    members.push_back({"packs_needed", said<"packs needed">(), needed_of(start.packs, packs_now)});
    members.push_back({"settle_with", said<"what would settle it">(),
                       start.settling
                           ? Value{start.settling->find}
                           : Value{Absent{said<"there is no doubt, or no one datum ends it">()}}});
    members.push_back({"down_to", said<"holds down to a charge of">(),
                       start.down_to ? value_of(*start.down_to)
                                     : Value{Absent{said<"it does not start as it is">()}}});
    members.push_back({"what_ifs", said<"and what if">(), what_ifs_of(start)});
    return members;
}

Value together_of(const StartPlan& plan) {
    if (!plan.together) return {Absent{said<"there are not several motors behind the inverter">()}};
    Members members;
    add_judgement(members, *plan.together);
    members.push_back(
        {"packs_needed", said<"packs needed">(), needed_of(plan.packs_together, plan.packs)});
    return {std::move(members)};
}

const std::string& name_at(const scenario::Scenario& scenario,
                           const starting::StaggeredStart& start) {
    return scenario.loads[start.load].name;
}

Value staggered_of(const scenario::Scenario& scenario, const StartPlan& plan) {
    List list;
    for (const auto& next : plan.staggered)
        list.push_back({Members{{"name", said<"load">(), {name_at(scenario, next)}},
                                {"verdict", said<"verdict">(), code(next.judged.verdict)},
                                {"binding", said<"bound by">(), code(next.judged.binding)},
                                {"wait", said<"then wait">(), value_of(next.wait)}}});
    return {std::move(list)};
}

Members values_of(const scenario::Scenario& scenario, const StartPlan& plan) {
    List loads;
    for (const auto& start : plan.loads)
        loads.push_back({values_of(start, plan.packs)});
    return {
        {"loads", said<"each alone, while all else that may be on is on">(), {std::move(loads)}},
        {"together", said<"all motors at once">(), together_of(plan)},
        {"staggered", said<"one after another, in this order">(), staggered_of(scenario, plan)},
        {"packs", said<"packs">(), {static_cast<std::int64_t>(plan.packs)}},
        {"charge", said<"how full the packs are">(), value_of(plan.charge)},
        {"rested_voltage", said<"their rested voltage">(), value_of(plan.emf)}};
}

// ---- Sentences.

Said of_one_that_starts(const LoadStart& start) {
    const auto* use = start.judged.of(start.judged.binding);
    const Said limit = starting::in_words(start.judged.binding);
    const Said share = in_percent(use == nullptr ? starting::Utilised(0.0) : use->used.high());
    if (start.down_to && start.down_to->value() > 0.01)
        return said<
            "The {load} starts (nearest limit: {limit}, at most {share} used), surely while the "
            "packs are at least {charge} full.">(start.name, limit, share,
                                                 in_words(*start.down_to, 2));
    return said<"The {load} starts (nearest limit: {limit}, at most {share} used).">(start.name,
                                                                                     limit, share);
}

Said sentence_for(const LoadStart& start, const StartPlan& plan) {
    if (start.refused)
        return said<"The {load} will not start: {why}.">(start.name, start.refused->found);
    if (start.judged.verdict == StartVerdict::starts) return of_one_that_starts(start);
    const Said why = reason_of(start.judged, plan.inverter, plan.source);
    Said verdict = start.judged.verdict == StartVerdict::marginal
                       ? said<"The {load} may or may not start: {why}.">(start.name, why)
                       : said<"The {load} will not start: {why}.">(start.name, why);
    return words::together(
        {std::move(verdict), words::as_sentence(packs_in_words(start.packs, plan.packs))});
}

Said one_by_one(const scenario::Scenario& scenario, const StartPlan& plan) {
    Said order;
    units::Duration wait{};
    for (const auto& next : plan.staggered) {
        const Said name = said<"{load}">(name_at(scenario, next));
        order = order.empty() ? name : said<"{loads}, then {next}">(std::move(order), name);
        wait = std::max(wait, next.wait);
    }
    const bool each_starts = std::ranges::all_of(plan.staggered, [](const auto& next) {
        return next.judged.verdict == StartVerdict::starts;
    });
    const Said apart = in_words(wait, 2);
    return each_starts
               ? said<"Switch on one by one, {time} apart: {order}; so each starts.">(apart, order)
               : said<"Switch on one by one, {time} apart: {order}.">(apart, order);
}

Said sentence_for_all(const scenario::Scenario& scenario, const StartPlan& plan) {
    const Judgement& judged = *plan.together;
    if (judged.verdict == StartVerdict::starts)
        return said<"All at once, as after a switch-on, they start.">();
    const Said why = reason_of(judged, plan.inverter, plan.source);
    Said verdict =
        judged.verdict == StartVerdict::marginal
            ? said<"All at once, as after a switch-on, they may or may not start: {why}.">(why)
            : said<"All at once, as after a switch-on, they will not start: {why}.">(why);
    return words::together({std::move(verdict), one_by_one(scenario, plan)});
}

std::vector<Said> sentences_of(const scenario::Scenario& scenario, const StartPlan& plan) {
    if (plan.loads.empty())
        return {
            said<"No load of this file has a motor, so there is nothing that has to start. "
                 "Give a load {key}, or {other}.">("motor = {...}", "like = \"sump pump 1/3 hp\"")};
    std::vector<const LoadStart*> order;
    for (const auto& start : plan.loads)
        order.push_back(&start);
    std::ranges::stable_sort(
        order, [](const auto* a, const auto* b) { return a->judged.verdict > b->judged.verdict; });
    std::vector<Said> sentences;
    for (const auto* start : order)
        sentences.push_back(sentence_for(*start, plan));
    if (plan.together) sentences.push_back(sentence_for_all(scenario, plan));
    return sentences;
}

// ---- Findings.

PinnedFinding pinned(scenario::Finding finding) {
    return {.finding = std::move(finding)};
}

Said refusal_source() {
    return said<"{source}">("motor method.md, Demand");
}

Said sure_source(const Judgement& judged) {
    return judged.binding == Constraint::voltage_class
               ? refusal_source()
               : said<"{source}; 0.90 from {book}">("starting method.md (5)",
                                                    "[Welding-generator handbook]");
}

Said what_is_found(const Judgement& judged, const StartPlan& plan) {
    const Said why = reason_of(judged, plan.inverter, plan.source);
    return judged.verdict == StartVerdict::marginal ? said<"May or may not start: {why}.">(why)
                                                    : said<"Will not start: {why}.">(why);
}

PinnedFinding finding_of(const LoadStart& start, const StartPlan& plan) {
    const Said where = said<"load {load}">(start.name);
    if (start.refused)
        return pinned({.severity = scenario::Severity::stop,
                       .where = where,
                       .text = words::as_sentence(start.refused->found),
                       .mend = start.refused->remedy,
                       .source = refusal_source()});
    const bool never = start.judged.verdict == StartVerdict::will_not_start;
    return pinned({.severity = never ? scenario::Severity::stop : scenario::Severity::caution,
                   .where = where,
                   .text = what_is_found(start.judged, plan),
                   .mend = mend_of(start, plan.packs),
                   .source = sure_source(start.judged)});
}

std::vector<PinnedFinding> findings_of(const scenario::Scenario& scenario, const StartPlan& plan) {
    std::vector<PinnedFinding> findings;
    for (const auto& start : plan.loads)
        if (start.refused || start.judged.verdict != StartVerdict::starts)
            findings.push_back(finding_of(start, plan));
    if (plan.together && plan.together->verdict != StartVerdict::starts)
        findings.push_back(pinned({.severity = scenario::Severity::caution,
                                   .where = said<"all motors at once">(),
                                   .text = what_is_found(*plan.together, plan),
                                   .mend = one_by_one(scenario, plan),
                                   .source = sure_source(*plan.together)}));
    for (const auto& finding : plan.findings)
        findings.push_back(pinned(finding));
    sort_by_weight(findings);
    return findings;
}

}  // namespace

Answer start_answer(const scenario::Scenario& scenario, const StartPlan& plan,
                    const scenario::Assumptions& assumptions) {
    Answer answer{.question = "start",
                  .title = scenario.title,
                  .sentences = sentences_of(scenario, plan),
                  .values = values_of(scenario, plan),
                  .findings = findings_of(scenario, plan),
                  .working = start_working(plan),
                  .assumptions = assumptions,
                  .cautions = cautions_for(scenario),
                  .series = start_series(plan),
                  .days = {},
                  .closing = closing_line(),
                  .defect = {}};
    answer.assumptions.insert(answer.assumptions.end(), plan.assumptions.begin(),
                              plan.assumptions.end());
    for (const auto& start : plan.loads)
        if (!start.refused) answer.starts.push_back(start_chart(start));
    return answer;
}

}  // namespace answers
