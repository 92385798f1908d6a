#include "answers/start/answer.hpp"

#include <algorithm>

#include <fmt/format.h>

#include "answers/cautions.hpp"
#include "answers/clock_words.hpp"
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

namespace {

template <class Written>
Value value_of(Written quantity) {
    if constexpr (std::is_same_v<Written, units::Duration>) {
        return quantity_or_reason(shown_in_seconds(quantity), "the number is not finite");
    } else {
        return quantity_or_reason(shown(quantity), "the number is not finite");
    }
}

template <class Written>
Value range_of(const units::Ends<Written>& ends) {
    const auto range = units::spanning(ends);
    return {Members{{"low", "at least", value_of(range.low())},
                    {"likely", "likely", value_of(range.likely())},
                    {"high", "at most", value_of(range.high())}}};
}

Quantity share_of_limit(starting::Utilised used) {
    return {.value = used.value(),
            .unit = "1",
            .shown = used.value() > 9.99 ? std::string("> 999 %")
                                         : fmt::format("{:.0f} %", 100.0 * used.value())};
}

Value utilisation_of(const Judgement& judged) {
    Members members;
    for (const auto& use : judged.used)
        members.push_back({std::string(starting::name_of(use.constraint)),
                           std::string(starting::in_words(use.constraint)),
                           {Members{{"low", "at least", {share_of_limit(use.used.low())}},
                                    {"likely", "likely", {share_of_limit(use.used.likely())}},
                                    {"high", "at most", {share_of_limit(use.used.high())}}}}});
    return {std::move(members)};
}

Value needed_of(const starting::PacksNeeded& packs) {
    if (packs.surely) return {static_cast<std::int64_t>(*packs.surely)};
    return {Absent{
        fmt::format("no number of packs {}, because of the {}",
                    packs.at_best == StartVerdict::will_not_start ? "helps" : "makes it sure",
                    starting::in_words(packs.because))}};
}

Value time_of(const LoadStart& start) {
    if (start.on_the_bus || start.refused)
        return {Absent{start.refused ? "it is not switched on at all"
                                     : "a 12 V motor has no such curve here"}};
    if (!start.run_up.low.comes_up) return {Absent{"it does not come up to speed"}};
    Members members{{"low", "at least", value_of(start.run_up.low.time)}};
    const auto add = [&](const char* key, const char* label, const starting::RunUp& run_up) {
        members.push_back({key, label,
                           run_up.comes_up ? value_of(run_up.time)
                                           : Value{Absent{"it does not come up to speed"}}});
    };
    add("likely", "likely", start.run_up.likely);
    add("high", "at most", start.run_up.high);
    return {std::move(members)};
}

void add_judgement(Members& members, const Judgement& judged) {
    members.push_back({"verdict", "verdict", {std::string(starting::name_of(judged.verdict))}});
    members.push_back({"binding", "what binds", {std::string(starting::name_of(judged.binding))}});
    if (judged.used.empty()) return;
    members.push_back({"utilisation", "share of each limit used", utilisation_of(judged)});
    members.push_back({"apparent_power", "asked of the inverter", range_of(judged.draw.apparent)});
    members.push_back({"plain_sum_of_volt_amperes", "its volt-amperes added as they stand",
                       value_of(judged.draw.plain_sum)});
    members.push_back({"dc_power", "asked of the packs", range_of(judged.draw.direct_power)});
    members.push_back({"voltage", "voltage at the inverter", range_of(judged.voltage)});
    members.push_back({"current", "current of all packs", range_of(judged.current)});
    members.push_back({"current_per_pack", "current of the pack nearest its limit",
                       range_of(judged.pack_current)});
}

Value what_ifs_of(const LoadStart& start) {
    List list;
    for (const auto& what_if : start.what_ifs)
        list.push_back(
            {Members{{"change", "", {what_if.change}},
                     {"verdict", "", {std::string(starting::name_of(what_if.verdict))}},
                     {"binding", "bound by", {std::string(starting::name_of(what_if.binding))}}}});
    return {std::move(list)};
}

Members values_of(const LoadStart& start) {
    Members members{{"name", "load", {start.name}}};
    add_judgement(members, start.judged);
    members.push_back({"time_to_speed", "time to speed", time_of(start)});
    members.push_back({"packs_needed", "packs needed", needed_of(start.packs)});
    members.push_back({"settle_with", "what would settle it",
                       start.settling
                           ? Value{start.settling->find}
                           : Value{Absent{"there is no doubt, or no one datum ends it"}}});
    members.push_back(
        {"down_to", "holds down to a charge of",
         start.down_to ? value_of(*start.down_to) : Value{Absent{"it does not start as it is"}}});
    members.push_back({"what_ifs", "and what if", what_ifs_of(start)});
    return members;
}

Value together_of(const StartPlan& plan) {
    if (!plan.together) return {Absent{"there are not several motors behind the inverter"}};
    Members members;
    add_judgement(members, *plan.together);
    members.push_back({"packs_needed", "packs needed", needed_of(plan.packs_together)});
    return {std::move(members)};
}

std::string name_at(const scenario::Scenario& scenario, const starting::StaggeredStart& start) {
    return scenario.loads[start.load].name;
}

Value staggered_of(const scenario::Scenario& scenario, const StartPlan& plan) {
    List list;
    for (const auto& next : plan.staggered)
        list.push_back(
            {Members{{"name", "", {name_at(scenario, next)}},
                     {"verdict", "", {std::string(starting::name_of(next.judged.verdict))}},
                     {"binding", "bound by", {std::string(starting::name_of(next.judged.binding))}},
                     {"wait", "then wait", value_of(next.wait)}}});
    return {std::move(list)};
}

Members values_of(const scenario::Scenario& scenario, const StartPlan& plan) {
    List loads;
    for (const auto& start : plan.loads)
        loads.push_back({values_of(start)});
    return {{"loads", "each alone, while all else that may be on is on", {std::move(loads)}},
            {"together", "all motors at once", together_of(plan)},
            {"staggered", "one after another, in this order", staggered_of(scenario, plan)},
            {"packs", "packs", {static_cast<std::int64_t>(plan.packs)}},
            {"charge", "how full the packs are", value_of(plan.charge)},
            {"rested_voltage", "their rested voltage", value_of(plan.emf)}};
}

// ---- Sentences.

std::string capital(std::string text) {
    if (!text.empty() && text[0] >= 'a' && text[0] <= 'z')
        text[0] = static_cast<char>(text[0] - 'a' + 'A');
    return text;
}

std::string sentence_for(const LoadStart& start, const StartPlan& plan) {
    if (start.refused)
        return fmt::format("The {} will not start: {}.", start.name, start.refused->found);
    std::string text = fmt::format("The {} {}", start.name, plain(start.judged.verdict));
    if (start.judged.verdict == StartVerdict::starts) {
        const auto* use = start.judged.of(start.judged.binding);
        text += fmt::format(" (nearest limit: {}, at most {:.0f} % used)",
                            starting::in_words(start.judged.binding),
                            use == nullptr ? 0.0 : 100.0 * use->used.high().value());
        if (start.down_to && start.down_to->value() > 0.01)
            text += fmt::format(", surely down to a charge of {}", in_words(*start.down_to, 2));
        return text + ".";
    }
    text += ": " + reason_of(start.judged, plan) + ".";
    const auto packs = packs_in_words(start.packs, plan.packs);
    if (!packs.empty()) text += " " + capital(packs) + ".";
    return text;
}

std::string sentence_for_all(const scenario::Scenario& scenario, const StartPlan& plan) {
    std::string text =
        fmt::format("All at once, as after a switch-on, they {}",
                    plan.together->verdict == StartVerdict::starts     ? "start"
                    : plan.together->verdict == StartVerdict::marginal ? "may or may not start"
                                                                       : "will not start");
    if (plan.together->verdict == StartVerdict::starts) return text + ".";
    text += ": " + reason_of(*plan.together, plan) + ".";
    const bool one_by_one = std::ranges::all_of(plan.staggered, [](const auto& next) {
        return next.judged.verdict == StartVerdict::starts;
    });
    std::string order;
    for (const auto& next : plan.staggered)
        order += (order.empty() ? "" : ", then ") + name_at(scenario, next);
    units::Duration wait{};
    for (const auto& next : plan.staggered)
        wait = std::max(wait, next.wait);
    return text + fmt::format(" Switch on one by one, {} apart: {}{}.", in_words(wait, 2), order,
                              one_by_one ? "; so each starts" : "");
}

std::vector<std::string> sentences_of(const scenario::Scenario& scenario, const StartPlan& plan) {
    if (plan.loads.empty())
        return {
            "No load of this file has a motor, so there is nothing that has to start. "
            "Give a load motor = {...}, or like = \"sump pump 1/3 hp\"."};
    std::vector<const LoadStart*> order;
    for (const auto& start : plan.loads)
        order.push_back(&start);
    std::ranges::stable_sort(
        order, [](const auto* a, const auto* b) { return a->judged.verdict > b->judged.verdict; });
    std::vector<std::string> sentences;
    for (const auto* start : order)
        sentences.push_back(sentence_for(*start, plan));
    if (plan.together) sentences.push_back(sentence_for_all(scenario, plan));
    return sentences;
}

// ---- Findings.

PinnedFinding pinned(scenario::Finding finding) {
    return {.finding = std::move(finding)};
}

std::string sure_source(const Judgement& judged) {
    return judged.binding == Constraint::voltage_class
               ? std::string("motor method.md, Demand")
               : std::string("starting method.md (5); 0.90 from [Welding-generator handbook]");
}

std::vector<PinnedFinding> findings_of(const scenario::Scenario& scenario, const StartPlan& plan) {
    std::vector<PinnedFinding> findings;
    for (const auto& start : plan.loads) {
        if (start.refused) {
            findings.push_back(pinned({.severity = scenario::Severity::stop,
                                       .where = "load " + start.name,
                                       .text = start.refused->found + ".",
                                       .mend = start.refused->remedy,
                                       .source = "motor method.md, Demand"}));
            continue;
        }
        if (start.judged.verdict == StartVerdict::starts) continue;
        const bool never = start.judged.verdict == StartVerdict::will_not_start;
        findings.push_back(pinned(
            {.severity = never ? scenario::Severity::stop : scenario::Severity::caution,
             .where = "load " + start.name,
             .text = fmt::format("{}: {}.", capital(std::string(plain(start.judged.verdict))),
                                 reason_of(start.judged, plan)),
             .mend = mend_of(start, plan.packs),
             .source = sure_source(start.judged)}));
    }
    if (plan.together && plan.together->verdict != StartVerdict::starts)
        findings.push_back(pinned(
            {.severity = scenario::Severity::caution,
             .where = "all motors at once",
             .text = fmt::format("{}: {}.", capital(std::string(plain(plan.together->verdict))),
                                 reason_of(*plan.together, plan)),
             .mend = sentence_for_all(scenario, plan),
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
                  .closing = std::string(closing_line),
                  .defect = {}};
    answer.assumptions.insert(answer.assumptions.end(), plan.assumptions.begin(),
                              plan.assumptions.end());
    for (const auto& start : plan.loads)
        if (!start.refused) answer.starts.push_back(start_chart(start));
    return answer;
}

}  // namespace answers
