#include "answers/note/answer.hpp"

#include <algorithm>

#include "answers/checked.hpp"
#include "answers/clock_words.hpp"
#include "units/said.hpp"

namespace answers {

namespace {

using scenario::Happened;
using scenario::LogEntry;
using words::said;

bool any(const std::vector<LogEntry>& log, auto test) {
    return std::ranges::any_of(
        log, [&](const LogEntry& entry) { return entry.happened && test(*entry.happened); });
}

// One that was away, or that its fuse cut off, may have grown cold.
bool has_pack_to_warm(const std::vector<LogEntry>& log) {
    return std::ranges::any_of(log, [](const LogEntry& entry) {
        return entry.happened == Happened::pack_joined || entry.happened == Happened::pack_back ||
               (entry.happened == Happened::fuse_opened && entry.pack);
    });
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
        cautions.push_back(
            {said<"Fire">(),
             said<"A fuse that opened has found a fault. Do not put in another, or a "
                  "larger one, before that fault is found and mended.">(),
             said<"common practice, no source">()});
    if (has_pack_to_warm(log) && may_be_cold(scenario))
        cautions.push_back(
            {said<"Lithium charging">(),
             said<"A pack that was in the cold is not charged before it is warm all "
                  "through: below {freezing} charging spoils lithium cells for good.">(
                 units::celsius(0.0)),
             said<"common practice, no source">()});
    if (any(log, [](Happened what) { return what == Happened::supply_back; }))
        cautions.push_back(
            {said<"Backfeed">(),
             said<"The supply is back: never join this unit to the house's wiring. A "
                  "generator stays outdoors while it runs.">(),
             said<"common practice, no source">()});
    return cautions;
}

Answer note_answer(const scenario::Scenario& scenario, const std::vector<notes::Understood>& noted,
                   const units::Errors& warnings) {
    Answer answer = checked_answer("note", scenario, {}, {});
    std::vector<LogEntry> log;
    List entries;
    for (const notes::Understood& one : noted) {
        log.push_back(one.entry);
        answer.sentences.push_back(noted.size() == 1 ? said<"Written down. {entry}">(one.said)
                                                     : words::Said(one.said));
        entries.push_back({Members{{"at", said<"written at">(), time_value(one.entry.at)},
                                   {"said", said<"entry">(), {one.said}}}});
    }
    if (noted.size() > 1)
        answer.sentences.insert(
            answer.sentences.begin(),
            said<"Written down, {n} entries:">(words::in_words(std::int64_t(noted.size()))));
    answer.values = {{"noted", said<"written down">(), {std::move(entries)}, true}};
    scenario::Findings findings;
    for (const auto& warning : warnings)
        findings.push_back({.severity = scenario::Severity::note,
                            .where = said<"the log">(),
                            .text = warning.found,
                            .mend = warning.remedy,
                            .source = said<"the file">()});
    answer.findings = as_sentences(findings);
    answer.cautions = cautions_of_log(scenario, log);
    return answer;
}

}  // namespace answers
