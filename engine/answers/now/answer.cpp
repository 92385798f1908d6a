#include "answers/now/answer.hpp"

#include <cmath>

#include "answers/chance_words.hpp"
#include "answers/checked.hpp"
#include "answers/clock_words.hpp"
#include "answers/note/answer.hpp"
#include "answers/now/sentences.hpp"
#include "answers/outage/sentences.hpp"

namespace answers {

namespace {

using estimate::Outlook;
using units::LocalTime;
using words::said;
using words::said_of;

Value lasting(LocalTime now, units::Duration lasts) {
    return {Members{{"lasts", said<"lasts from now">(), value_of(lasts)},
                    {"ends_at", said<"until">(), time_value(now + lasts)}}};
}

Value percent(units::Probability of) {
    return value_of(of, 2);
}

Value chance_of(const chance::Figures& figures) {
    return {Members{{"of", said<"to the end">(), percent(figures.of)},
                    {"low", said<"at least">(), percent(figures.low)},
                    {"high", said<"at most">(), percent(figures.high)},
                    {"members", said<"members">(), {std::int64_t(figures.members)}},
                    {"effective",
                     said<"as many of equal weight">(),
                     {std::int64_t(std::lround(figures.effective))}}}};
}

Value over_chances(LocalTime now, const chance::Figures& figures) {
    return {Members{
        {"nine_in_ten", said<"nine in ten last longer">(), lasting(now, figures.nine_in_ten)},
        {"half", said<"half last longer">(), lasting(now, figures.half)},
        {"one_in_ten", said<"one in ten lasts longer">(), lasting(now, figures.one_in_ten)}}};
}

Value count_on(LocalTime now, const chance::Figures& figures) {
    return {Members{{"chance", said<"chance">(), percent(figures.goal)},
                    {"lasts", said<"lasts from now">(), value_of(figures.count_on)},
                    {"ends_at", said<"until">(), time_value(now + figures.count_on)}}};
}

Value was_of(LocalTime now, const Outlook& outlook) {
    if (!outlook.was) return {Absent{said<"nothing was read yet">()}};
    return {Members{{"over_chances", said<"from then">(), over_chances(now, *outlook.was)},
                    {"count_on", said<"count on it">(), count_on(now, *outlook.was)},
                    {"chance", said<"chance">(), chance_of(*outlook.was)}}};
}

List steps_of(const scenario::Scenario& scenario, LocalTime now, const Outlook& outlook) {
    List steps;
    for (const auto& step : outlook.next_off)
        steps.push_back({Members{
            {"load", said<"switch off">(), {scenario.loads[step.load].name}},
            {"alone_gains", said<"alone">(), value_of(step.alone)},
            {"then_ends_at", said<"then, with those before, until">(),
             time_value(now + step.figures.count_on)},
            {"then_most_likely", said<"most likely until">(), time_value(now + step.figures.half)},
            {"then_chance", said<"to the end">(), percent(step.figures.of)}}});
    return steps;
}

List reads_of(const scenario::Scenario& scenario, const Outlook& outlook) {
    List reads;
    for (const auto& next : outlook.read_next)
        reads.push_back(
            {Members{{"what", said<"read">(), {next_read_in_words(scenario, next)}},
                     {"width_after", said<"then known to">(), value_of(next.width_after)}}});
    return reads;
}

List entries(const scenario::Scenario& scenario, const std::vector<std::size_t>& places) {
    List list;
    for (const std::size_t place : places)
        list.push_back({entry_in_short(scenario.log[place])});
    return list;
}

List departures_of(const scenario::Scenario& scenario, const Outlook& outlook) {
    static const Code codes[] = {{"perhaps", said<"perhaps">()},
                                 {"probably", said<"probably">()},
                                 {"surely", said<"surely">()}};
    const auto factor = [](double of) {
        return quantity_or_reason(plain_number(of, 2), said<"the number is not finite">());
    };
    List list;
    for (const auto& one : outlook.departures) {
        List or_else;
        for (const auto& other : one.or_else)
            or_else.push_back({other});
        list.push_back(
            {Members{{"what", said<"what">(), {one.what}},
                     {"factor",
                      said<"of the plan">(),
                      {Members{{"low", said<"at least">(), factor(one.low)},
                               {"likely", said<"likely">(), factor(one.likely)},
                               {"high", said<"at most">(), factor(one.high)}}}},
                     {"sure", said<"how surely">(), {codes[static_cast<std::size_t>(one.sure)]}},
                     {"because", said<"because of">(), {entries(scenario, one.because)}},
                     {"or_else", said<"or else">(), {std::move(or_else)}}}});
    }
    return list;
}

List contradictions_of(const scenario::Scenario& scenario, const Outlook& outlook) {
    return outlook.contradiction ? entries(scenario, outlook.contradiction->odd) : List{};
}

Series steps_series(const scenario::Scenario& scenario, LocalTime now, const Outlook& outlook) {
    std::vector<words::Said> loads;
    std::vector<words::Said> alone;
    std::vector<Code> until;
    std::vector<words::Said> chance;
    for (const auto& step : outlook.next_off) {
        loads.push_back(scenario.loads[step.load].name);
        alone.push_back(length_in_words(step.alone));
        until.push_back({.code = time_in_iso(now + step.figures.count_on),
                         .said = counted_on_in_words(now, step.figures.count_on),
                         .is_time = true});
        chance.push_back(in_words(step.figures.of, 2));
    }
    return {.name = "next_off",
            .title = said<"What to switch off, each with those above it">(),
            .columns = {{"load", said<"switch off">(), "", std::move(loads)},
                        {"alone", said<"alone buys">(), "", std::move(alone)},
                        {"until", said<"count on it until">(), "", std::move(until)},
                        {"chance", said<"to the end">(), "", std::move(chance)}},
            .brief = true};
}

void add_cold(scenario::Findings& findings, const scenario::Scenario& scenario) {
    constexpr units::Temperature cold = units::celsius(10.0);
    if (!scenario.outage.battery_temperature || !(*scenario.outage.battery_temperature < cold))
        return;
    findings.push_back(
        {.severity = scenario::Severity::note,
         .where = said<"packs">(),
         .text = said<"In the cold a share of the charge cannot be drawn: a display that "
                      "counts charge does not know it, these times do">(),
         .mend = said<"keep the packs as warm as the room allows">(),
         .source = said<"{method}, cold">("battery method.md")});
}

// A load that was on all the time and is only written down later would be counted as off.
void add_taken_as_off(scenario::Findings& findings, const scenario::Scenario& scenario,
                      const Outlook& outlook) {
    for (const std::size_t load : outlook.story.taken_as_off) {
        const auto until = scenario.outage.starts + outlook.story.off[load].front().until;
        findings.push_back(
            {.severity = scenario::Severity::note,
             .where = said<"load {load}">(scenario.loads[load].name),
             .text =
                 said<"Was first written down as switched on, {when}: until then it counts as off">(
                     weekday_and_time(until)),
             .mend = said<"strike that entry if it was on before">(),
             .source = "estimate method.md (10)"});
    }
}

scenario::Findings findings_of(const scenario::Scenario& scenario, const Outlook& outlook) {
    scenario::Findings findings;
    add_cold(findings, scenario);
    add_taken_as_off(findings, scenario, outlook);
    constexpr double few = 100.0;
    if (outlook.figures.effective < few)
        findings.push_back(
            {.severity = scenario::Severity::caution,
             .where = said<"the log">(),
             .text = said<
                 "Only {n} of the cases counted agree with the readings: the times are less sure "
                 "than they look">(words::with_decimals(outlook.figures.effective, 0)),
             .mend = said<"strike a reading that may be wrong, or read again">(),
             .source = "estimate method.md (6)"});
    return findings;
}

Members values_of(const scenario::Scenario& scenario, LocalTime now, const Outlook& outlook) {
    const auto& figures = outlook.figures;
    return {
        {"now", said<"from">(), time_value(now)},
        {"over_chances", said<"from now">(), over_chances(now, figures)},
        {"count_on", said<"count on it">(), count_on(now, figures)},
        {"chance", said<"chance">(), chance_of(figures)},
        {"was", said<"before the last reading">(), was_of(now, outlook), true},
        {"limited_by", said<"what ends it">(), {code_of(outlook.limited_by)}},
        {"charge_low", said<"charge now, at least">(), value_of(outlook.charge_low, 2)},
        {"charge_likely", said<"most likely">(), value_of(outlook.charge_likely, 2)},
        {"charge_high", said<"at most">(), value_of(outlook.charge_high, 2)},
        {"out_already", said<"has failed already">(), percent(outlook.out_already)},
        {"next_off", said<"switch off next">(), {steps_of(scenario, now, outlook)}, true},
        {"read_next", said<"read next">(), {reads_of(scenario, outlook)}, true},
        {"departures", said<"departs from the plan">(), {departures_of(scenario, outlook)}, true},
        {"contradictions", said<"cannot be true">(), {contradictions_of(scenario, outlook)}, true},
        {"readings", said<"readings">(), {std::int64_t(outlook.readings)}},
        {"to_expected_back", said<"it lasts until then">(),
         outlook.to_expected ? percent(*outlook.to_expected)
                             : Value{Absent{said<"no entry says when the supply is expected">()}}},
        {"expected_back", said<"expected back">(),
         outlook.story.expected_back ? time_value(*outlook.story.expected_back)
                                     : Value{Absent{said<"no entry says when">()}}}};
}

std::vector<WorkingRow> working_of(const Outlook& outlook) {
    const double counting = outlook.figures.effective;
    return {{said<"Estimate">(), said<"members that count">(), plain_number(counting, 0),
             "estimate method.md (6)", said<"the log">()},
            {said<"Estimate">(), said<"charge now, at least">(), shown(outlook.charge_low, 2),
             "estimate method.md (5)", said<"the log">()},
            {said<"Estimate">(), said<"charge now, at most">(), shown(outlook.charge_high, 2),
             "estimate method.md (5)", said<"the log">()},
            {said<"Estimate">(), said<"width of the time that is left">(), shown(outlook.width),
             "estimate method.md (4)", said<"four members in five">()}};
}

}  // namespace

namespace {

// What holds by now: nothing that was struck, nothing that is yet to come.
std::vector<scenario::LogEntry> entries_until(const scenario::Scenario& scenario, LocalTime now) {
    std::vector<scenario::LogEntry> entries;
    for (const std::size_t place : scenario::standing(scenario.log))
        if (scenario.log[place].at <= now) entries.push_back(scenario.log[place]);
    return entries;
}

}  // namespace

Answer now_answer(const scenario::Scenario& scenario, LocalTime now, const Outlook& outlook) {
    Answer answer = checked_answer("now", scenario, findings_of(scenario, outlook), {});
    answer.sentences = now_sentences(scenario, now, outlook);
    answer.values = values_of(scenario, now, outlook);
    for (Member& member : answer.values)
        member.aside = true;  // three sentences are enough
    answer.working = working_of(outlook);
    answer.series = {steps_series(scenario, now, outlook)};
    for (auto& caution : cautions_of_log(scenario, entries_until(scenario, now)))
        answer.cautions.insert(answer.cautions.begin(), std::move(caution));
    return answer;
}

}  // namespace answers
