#include "answers/now/answer.hpp"

#include <cmath>

#include <fmt/format.h>

#include "answers/checked.hpp"
#include "answers/clock_words.hpp"
#include "answers/note/answer.hpp"
#include "answers/now/sentences.hpp"

namespace answers {

namespace {

using estimate::Outlook;
using units::LocalTime;

std::string_view limit_word(outage::LimitedBy limit) {
    constexpr std::string_view words[] = {"none", "charge",         "low_voltage", "pack_limit",
                                          "fuse", "inverter_limit", "usable"};
    return words[static_cast<std::size_t>(limit)];
}

Value lasting(LocalTime now, units::Duration lasts) {
    return {Members{{"lasts", "lasts from now", value_of(lasts)},
                    {"ends_at", "until", {time_in_iso(now + lasts)}}}};
}

Value percent(units::Probability of) {
    return value_of(of, 2);
}

Value chance_of(const chance::Figures& figures) {
    return {Members{{"of", "to the end", percent(figures.of)},
                    {"low", "at least", percent(figures.low)},
                    {"high", "at most", percent(figures.high)},
                    {"members", "members", {std::int64_t(figures.members)}},
                    {"effective", "as many as", {std::int64_t(std::lround(figures.effective))}}}};
}

Value over_chances(LocalTime now, const chance::Figures& figures) {
    return {Members{{"nine_in_ten", "nine in ten last longer", lasting(now, figures.nine_in_ten)},
                    {"half", "half last longer", lasting(now, figures.half)},
                    {"one_in_ten", "one in ten lasts longer", lasting(now, figures.one_in_ten)}}};
}

Value count_on(LocalTime now, const chance::Figures& figures) {
    return {Members{{"chance", "chance", percent(figures.goal)},
                    {"lasts", "lasts from now", value_of(figures.count_on)},
                    {"ends_at", "until", {time_in_iso(now + figures.count_on)}}}};
}

Value was_of(LocalTime now, const Outlook& outlook) {
    if (!outlook.was) return {Absent{"nothing was read yet"}};
    return {Members{{"over_chances", "", over_chances(now, *outlook.was)},
                    {"count_on", "", count_on(now, *outlook.was)},
                    {"chance", "", chance_of(*outlook.was)}}};
}

List steps_of(const scenario::Scenario& scenario, LocalTime now, const Outlook& outlook) {
    List steps;
    for (const auto& step : outlook.next_off)
        steps.push_back({Members{
            {"load", "switch off", {scenario.loads[step.load].name}},
            {"alone_gains", "alone", value_of(step.alone)},
            {"then_ends_at",
             "then, with those before, until",
             {time_in_iso(now + step.figures.count_on)}},
            {"then_most_likely", "most likely until", {time_in_iso(now + step.figures.half)}},
            {"then_chance", "to the end", percent(step.figures.of)}}});
    return steps;
}

List reads_of(const scenario::Scenario& scenario, const Outlook& outlook) {
    List reads;
    for (const auto& next : outlook.read_next)
        reads.push_back({Members{{"what", "read", {next_read_in_words(scenario, next)}},
                                 {"width_after", "then known to", value_of(next.width_after)}}});
    return reads;
}

List entries(const scenario::Scenario& scenario, const std::vector<std::size_t>& places) {
    List list;
    for (const std::size_t place : places)
        list.push_back({entry_in_short(scenario.log[place])});
    return list;
}

List departures_of(const scenario::Scenario& scenario, const Outlook& outlook) {
    constexpr const char* words[] = {"perhaps", "probably", "surely"};
    const auto factor = [](double of) {
        return quantity_or_reason({of, "1", fmt::format("{:.2f}", of)}, "not finite");
    };
    List list;
    for (const auto& one : outlook.departures) {
        List or_else;
        for (const auto& other : one.or_else)
            or_else.push_back({other});
        list.push_back({Members{
            {"what", "what", {one.what}},
            {"factor",
             "of the plan",
             {Members{{"low", "", factor(one.low)},
                      {"likely", "", factor(one.likely)},
                      {"high", "", factor(one.high)}}}},
            {"sure", "how surely", {std::string(words[static_cast<std::size_t>(one.sure)])}},
            {"because", "because of", {entries(scenario, one.because)}},
            {"or_else", "or else", {std::move(or_else)}}}});
    }
    return list;
}

List contradictions_of(const scenario::Scenario& scenario, const Outlook& outlook) {
    return outlook.contradiction ? entries(scenario, outlook.contradiction->odd) : List{};
}

Series steps_series(const scenario::Scenario& scenario, LocalTime now, const Outlook& outlook) {
    std::vector<std::string> loads;
    std::vector<double> alone;
    std::vector<std::string> until;
    std::vector<double> chance;
    for (const auto& step : outlook.next_off) {
        loads.push_back(scenario.loads[step.load].name);
        alone.push_back(step.alone / units::hour);
        until.push_back(time_in_iso(now + step.figures.count_on));
        chance.push_back(100.0 * step.figures.of.value());
    }
    return {.name = "next_off",
            .title = "What to switch off, each with those above it",
            .columns = {{"load", "switch off", "", std::move(loads)},
                        {"alone", "alone buys", "h", std::move(alone)},
                        {"until", "count on it until", "", std::move(until)},
                        {"chance", "to the end", "%", std::move(chance)}},
            .brief = true};
}

void add_cold(scenario::Findings& findings, const scenario::Scenario& scenario) {
    constexpr units::Temperature cold = units::celsius(10.0);
    if (!scenario.outage.battery_temperature || !(*scenario.outage.battery_temperature < cold))
        return;
    findings.push_back({.severity = scenario::Severity::note,
                        .where = "packs",
                        .text = "In the cold a share of the charge cannot be drawn: a display that "
                                "counts charge does not know it, these times do",
                        .mend = "keep the packs as warm as the room allows",
                        .source = "battery method.md, cold"});
}

// A load that was on all the time and is only written down later would be counted as off.
void add_taken_as_off(scenario::Findings& findings, const scenario::Scenario& scenario,
                      const Outlook& outlook) {
    for (const std::size_t load : outlook.story.taken_as_off) {
        const auto until = scenario.outage.starts + outlook.story.off[load].front().until;
        findings.push_back({.severity = scenario::Severity::note,
                            .where = "load " + scenario.loads[load].name,
                            .text = fmt::format("Was first written down as switched on, {}: until "
                                                "then it counts as off",
                                                weekday_and_time(until)),
                            .mend = "strike that entry if it was on before",
                            .source = "estimate method.md (10)"});
    }
}

scenario::Findings findings_of(const scenario::Scenario& scenario, const Outlook& outlook) {
    scenario::Findings findings;
    add_cold(findings, scenario);
    add_taken_as_off(findings, scenario, outlook);
    constexpr double few = 100.0;
    if (outlook.figures.effective < few)
        findings.push_back({.severity = scenario::Severity::caution,
                            .where = "log",
                            .text = fmt::format("Only {:.0f} members of the chance agree with the "
                                                "readings: the times are less sure than they look",
                                                outlook.figures.effective),
                            .mend = "strike a reading that may be wrong, or read again",
                            .source = "estimate method.md (6)"});
    return findings;
}

}  // namespace

Answer now_answer(const scenario::Scenario& scenario, LocalTime now, const Outlook& outlook) {
    Answer answer = checked_answer("now", scenario, findings_of(scenario, outlook), {});
    answer.sentences = now_sentences(scenario, now, outlook);
    const auto& figures = outlook.figures;
    answer.values = {
        {"now", "from", {time_in_iso(now)}},
        {"over_chances", "from now", over_chances(now, figures)},
        {"count_on", "count on it", count_on(now, figures)},
        {"chance", "chance", chance_of(figures)},
        {"was", "before the last reading", was_of(now, outlook), true},
        {"limited_by", "ended by", {std::string(limit_word(outlook.limited_by))}},
        {"charge_low", "charge now, at least", value_of(outlook.charge_low, 2)},
        {"charge_likely", "most likely", value_of(outlook.charge_likely, 2)},
        {"charge_high", "at most", value_of(outlook.charge_high, 2)},
        {"out_already", "has failed already", percent(outlook.out_already)},
        {"next_off", "switch off next", {steps_of(scenario, now, outlook)}, true},
        {"read_next", "read next", {reads_of(scenario, outlook)}, true},
        {"departures", "departs from the plan", {departures_of(scenario, outlook)}, true},
        {"contradictions", "cannot be true", {contradictions_of(scenario, outlook)}, true},
        {"readings", "readings", {std::int64_t(outlook.readings)}},
        {"to_expected_back", "it lasts until then",
         outlook.to_expected ? percent(*outlook.to_expected)
                             : Value{Absent{"no entry says when the supply is expected"}}},
        {"expected_back", "expected back",
         outlook.story.expected_back ? Value{time_in_iso(*outlook.story.expected_back)}
                                     : Value{Absent{"no entry says when"}}}};
    for (Member& member : answer.values)
        member.aside = true;  // three sentences are enough
    answer.working = {{"Estimate",
                       "members that count",
                       {figures.effective, "1", fmt::format("{:.0f}", figures.effective)},
                       "estimate method.md (6)",
                       "the log"},
                      {"Estimate", "charge now, at least", shown(outlook.charge_low, 2),
                       "estimate method.md (5)", "the log"},
                      {"Estimate", "charge now, at most", shown(outlook.charge_high, 2),
                       "estimate method.md (5)", "the log"},
                      {"Estimate", "width of the time that is left", shown(outlook.width),
                       "estimate method.md (4)", "four members in five"}};
    answer.series = {steps_series(scenario, now, outlook)};
    for (auto& caution : cautions_of_log(scenario, scenario.log))
        answer.cautions.insert(answer.cautions.begin(), std::move(caution));
    return answer;
}

}  // namespace answers
