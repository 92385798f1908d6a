#include "answers/outage/starts.hpp"

#include "answers/clock_words.hpp"
#include "answers/shown.hpp"
#include "answers/start/words.hpp"

namespace answers {

using questions::OutageStarts;
using questions::StartMoment;
using questions::StartStory;
using words::Said;
using words::said;

namespace {

Said clock_of(const scenario::Scenario& scenario, units::Duration at) {
    return weekday_and_time(scenario.outage.starts + at);
}

Said packs_at(const StartMoment& moment) {
    constexpr units::Voltage seen_in_words = 0.05 * units::volt;
    const auto& [start, packs] = moment;
    const Said charge = in_words(packs.charge, 2);
    const Said middle = in_words(packs.middle, 3);
    if (packs.high - packs.low <= seen_in_words)
        return said<"the packs are at {charge} and {voltage}">(charge, middle);
    return said<"the packs are at {charge} and {voltage} ({low} to {high} four times in five)">(
        charge, middle, in_words(packs.low, 3), in_words(packs.high, 3));
}

PinnedFinding finding_of(const scenario::Scenario& scenario, const StartStory& story,
                         scenario::Severity severity, const StartMoment& first, Said text,
                         Said mend) {
    return {.finding = {.severity = severity,
                        .where = said<"load {load}">(scenario.loads[story.load].name),
                        .text = std::move(text),
                        .mend = std::move(mend),
                        .source = said<"{source}">("starting method.md (5)")},
            .at = first.start.at,
            .when = clock_of(scenario, first.start.at)};
}

PinnedFinding failing(const scenario::Scenario& scenario, const StartStory& story,
                      const Said& why) {
    const auto& first = story.first_failed->moment;
    Said text;
    if (!story.last_good && !story.good_after_failure)
        text = said<"Does not start, not even the first time: {why}.">(why);
    else if (!story.good_after_failure)
        text = said<"Starts until {when}, then no longer: when {packs}, {why}.">(
            clock_of(scenario, story.last_good->start.at), packs_at(first), why);
    else
        text = said<
            "Does not start {failed} of {starts} times, the first on {when}: when {packs}, "
            "{why}.">(story.failed, story.starts, clock_of(scenario, first.start.at),
                      packs_at(first), why);
    return finding_of(scenario, story, scenario::Severity::stop, first, std::move(text),
                      said<"The answer about starts says what helps: packs, another order, or "
                           "less that is on besides">());
}

PinnedFinding doubtful(const scenario::Scenario& scenario, const StartStory& story,
                       const Said& why) {
    const auto& first = story.first_doubtful->moment;
    Said text =
        story.doubtful == story.starts
            ? said<"May or may not start, from the first time on: {why}.">(why)
            : said<
                  "In doubt at {doubtful} of {starts} starts, the first on {when}: when "
                  "{packs}, {why}.">(story.doubtful, story.starts,
                                     clock_of(scenario, first.start.at), packs_at(first), why);
    return finding_of(scenario, story, scenario::Severity::caution, first, std::move(text),
                      said<"The answer about starts says what would settle it">());
}

// A plate that cannot be used stops `start`; the plan of the outage goes on without it.
PinnedFinding not_known(const units::Error& error) {
    return {.finding = {.severity = scenario::Severity::caution,
                        .where = error.where,
                        .text = said<"Whether motors start is not known: {why}.">(error.found),
                        .mend = error.remedy,
                        .source = said<"the scenario file">()}};
}

}  // namespace

std::vector<PinnedFinding> outage_start_findings(const scenario::Scenario& scenario,
                                                 const OutageStarts& starts) {
    const auto why = [&starts](const questions::JudgedStart& start) {
        return reason_of(start.judged, starts.inverter, starts.source);
    };
    std::vector<PinnedFinding> findings;
    for (const auto& error : starts.not_known)
        findings.push_back(not_known(error));
    for (const auto& story : starts.stories) {
        if (story.first_failed)
            findings.push_back(failing(scenario, story, why(*story.first_failed)));
        if (story.first_doubtful)
            findings.push_back(doubtful(scenario, story, why(*story.first_doubtful)));
    }
    return findings;
}

}  // namespace answers
