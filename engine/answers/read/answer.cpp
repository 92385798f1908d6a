#include "answers/read/answer.hpp"

#include <algorithm>

#include "answers/clock_words.hpp"
#include "answers/outage/series.hpp"
#include "scenario/keys/listing.hpp"
#include "units/quote.hpp"

namespace answers {

namespace {

using scenario::ListedKey;
using words::Said;
using words::said;
using words::said_of;
using Words = std::vector<Said>;

// All items of a list of tables, each table's count of them.
template <class Parts>
int count_of(const Parts& parts) {
    int count = 0;
    for (const auto& part : parts) {
        count += part.count;
    }
    return count;
}

Said outage_in_words(const scenario::Outage& outage) {
    const Said start = date_and_time(outage.starts);
    if (outage.open_ended) return said<"an outage from {start}, nobody knows how long">(start);
    return said<"an outage of {length} from {start}">(length_in_words(outage.lasts), start);
}

Said sentence(const scenario::ReadScenario& read) {
    const auto& scenario = read.scenario;
    const words::List parts{
        .items = {said_of<"{n} pack", "{n} packs">(count_of(scenario.packs)),
                  said_of<"{n} panel", "{n} panels">(count_of(scenario.panels)),
                  said_of<"{n} load", "{n} loads">(count_of(scenario.loads)),
                  scenario.inverter ? said<"an inverter">() : said<"no inverter">()},
        .joint = words::List::Joint::comma};
    return said<"Read {file}: {outage}; {parts}.">(units::quote(read.file_name, 200),
                                                   outage_in_words(scenario.outage), parts);
}

Column column_of(const char* name, Said heading, Words points) {
    return {.name = name, .heading = std::move(heading), .unit = "", .points = std::move(points)};
}

Series given_keys(const std::vector<ListedKey>& keys) {
    Words names;
    std::vector<Code> values;
    Words lines;
    for (const auto& key : keys) {
        if (key.given) {
            names.push_back(said<"{key}">(key.key));
            values.push_back({.code = key.value, .said = key.said});
            lines.push_back(key.line > 0 ? said<"line {number}">(key.line) : key.origin);
        }
    }
    return {.name = "given",
            .title = said<"Given">(),
            .columns = {column_of("key", said<"key">(), std::move(names)),
                        {.name = "value",
                         .heading = said<"value">(),
                         .unit = "",
                         .points = std::move(values)},
                        column_of("from", said<"{?line}from">(), std::move(lines))},
            .brief = true};
}

Series silent_keys(const std::vector<ListedKey>& keys) {
    Words names;
    Words holds;
    for (const auto& key : keys) {
        if (!key.given) {
            names.push_back(said<"{key}">(key.key));
            holds.push_back(key.value.empty() ? key.origin
                                              : said<"{value}; {origin}">(key.said, key.origin));
        }
    }
    return {.name = "silent",
            .title = said<"Not given">(),
            .columns = {column_of("key", said<"key">(), std::move(names)),
                        column_of("holds", said<"what holds">(), std::move(holds))}};
}

Series limits_of_keys(const std::vector<ListedKey>& keys) {
    Words names;
    Words limits;
    for (const auto& key : keys) {
        if (!key.limits.empty()) {
            names.push_back(said<"{key}">(key.key));
            limits.push_back(key.limits);
        }
    }
    return {.name = "limits",
            .title = said<"What each key takes">(),
            .columns = {column_of("key", said<"key">(), std::move(names)),
                        column_of("takes", said<"takes">(), std::move(limits))}};
}

PinnedFinding warning(const units::Error& error) {
    return {.finding = {.severity = scenario::Severity::caution,
                        .where = error.line > 0
                                     ? said<"line {number}, {key}">(error.line, error.where)
                                     : said<"{key}">(error.where),
                        .text = words::as_sentence(error.found),
                        .mend = error.remedy,
                        .source = said<"the scenario file">()}};
}

}  // namespace

Answer read_answer(const scenario::ReadScenario& read, const std::vector<outage::LoadUse>& loads) {
    const auto keys = scenario::listing(read);
    const auto given = std::ranges::count_if(keys, &ListedKey::given);
    Answer answer{
        .question = "read",
        .title = read.scenario.title,
        .sentences = {sentence(read)},
        .values =
            {{"file", said<"file">(), {read.file_name}},
             {"given", said<"keys given">(), {static_cast<std::int64_t>(given)}},
             {"silent", said<"keys not given">(), {static_cast<std::int64_t>(keys.size()) - given}},
             {"warnings", said<"warnings">(), {static_cast<std::int64_t>(read.warnings.size())}}},
        .findings = {},
        .working = {},
        .assumptions = {},
        .cautions = {},
        .series = {given_keys(keys)},
        .days = {},
        .closing = closing_line(),
        .defect = {}};
    for (const auto& error : read.warnings) {
        answer.findings.push_back(warning(error));
    }
    if (!loads.empty()) {
        answer.series.push_back(loads_table(loads));
        answer.series.back().brief = true;
    }
    answer.series.push_back(silent_keys(keys));
    answer.series.push_back(limits_of_keys(keys));
    return answer;
}

}  // namespace answers
