#include "answers/note/answer.hpp"

#include <algorithm>

#include "answers/checked.hpp"
#include "answers/clock_words.hpp"

namespace answers {

namespace {

using scenario::Happened;
using scenario::LogEntry;

bool any(const std::vector<LogEntry>& log, auto test) {
    return std::ranges::any_of(
        log, [&](const LogEntry& entry) { return entry.happened && test(*entry.happened); });
}

bool may_be_cold(const scenario::Scenario& scenario) {
    const bool lithium = std::ranges::any_of(scenario.packs, [](const scenario::Pack& pack) {
        return pack.chemistry == scenario::Chemistry::lifepo4;
    });
    const auto told = scenario.outage.battery_temperature;
    constexpr units::Temperature may_freeze = units::celsius(5.0);
    return lithium && (!told || *told < may_freeze);
}

}  // namespace

std::vector<Caution> cautions_of_log(const scenario::Scenario& scenario,
                                     const std::vector<LogEntry>& log) {
    std::vector<Caution> cautions;
    if (any(log, [](Happened what) { return what == Happened::fuse_opened; }))
        cautions.push_back({"Fire",
                            "A fuse that opened has found a fault. Do not put in another, or a "
                            "larger one, before that fault is found and mended.",
                            "common practice, no source"});
    if (any(log,
            [](Happened what) {
                return what == Happened::pack_back || what == Happened::pack_joined;
            }) &&
        may_be_cold(scenario))
        cautions.push_back({"Lithium charging",
                            "A pack that was in the cold is not charged before it is warm all "
                            "through: below 0 degC charging spoils lithium cells for good.",
                            "common practice, no source"});
    if (any(log, [](Happened what) { return what == Happened::supply_back; }))
        cautions.push_back({"Backfeed",
                            "The supply is back: never join this unit to the house's wiring. A "
                            "generator stays outdoors while it runs.",
                            "common practice, no source"});
    return cautions;
}

Answer note_answer(const scenario::Scenario& scenario, const std::vector<notes::Understood>& noted,
                   const units::Errors& warnings) {
    Answer answer = checked_answer("note", scenario, {}, {});
    std::vector<LogEntry> log;
    List entries;
    for (const notes::Understood& one : noted) {
        log.push_back(one.entry);
        answer.sentences.push_back((noted.size() == 1 ? "Written down. " : "") + one.said);
        entries.push_back(
            {Members{{"at", "", {time_in_iso(one.entry.at)}}, {"said", "", {one.said}}}});
    }
    if (noted.size() > 1)
        answer.sentences.insert(
            answer.sentences.begin(),
            "Written down, " + number_in_words(int(noted.size())) + " entries:");
    answer.values = {{"noted", "written down", {std::move(entries)}, true}};
    scenario::Findings findings;
    for (const auto& warning : warnings)
        findings.push_back({.severity = scenario::Severity::note,
                            .where = "log",
                            .text = warning.found,
                            .mend = warning.remedy,
                            .source = "the file"});
    answer.findings = as_sentences(findings);
    answer.cautions = cautions_of_log(scenario, log);
    return answer;
}

}  // namespace answers
