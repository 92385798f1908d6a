#include "answers/read/answer.hpp"

#include <algorithm>

#include <fmt/format.h>

#include "answers/clock_words.hpp"
#include "answers/outage/series.hpp"
#include "scenario/listing.hpp"
#include "units/quote.hpp"
#include "units/text.hpp"

namespace answers {

namespace {

using scenario::ListedKey;
using Words = std::vector<std::string>;

std::string count(int number, std::string_view one, std::string_view many) {
    return fmt::format("{} {}", number, number == 1 ? one : many);
}

std::string sentence(const scenario::ReadScenario& read) {
    const auto& scenario = read.scenario;
    int packs = 0;
    int panels = 0;
    int loads = 0;
    for (const auto& pack : scenario.packs) {
        packs += pack.count;
    }
    for (const auto& panel : scenario.panels) {
        panels += panel.count;
    }
    for (const auto& load : scenario.loads) {
        loads += load.count;
    }
    return fmt::format("Read {}: an outage of {} from {}; {}, {}, {}, {}.",
                       units::quote(read.file_name, 200), length_in_words(scenario.outage.lasts),
                       date_and_time(scenario.outage.starts), count(packs, "pack", "packs"),
                       count(panels, "panel", "panels"), count(loads, "load", "loads"),
                       scenario.inverter ? "an inverter" : "no inverter");
}

Series given_keys(const std::vector<ListedKey>& keys) {
    Words names;
    Words values;
    Words lines;
    for (const auto& key : keys) {
        if (key.given) {
            names.push_back(key.key);
            values.push_back(key.value);
            lines.push_back(key.line > 0 ? fmt::format("line {}", key.line) : key.origin);
        }
    }
    return {.name = "given",
            .title = "Given",
            .columns = {{.name = "key", .heading = "key", .unit = "", .points = names},
                        {.name = "value", .heading = "value", .unit = "", .points = values},
                        {.name = "from", .heading = "from", .unit = "", .points = lines}},
            .brief = true};
}

Series silent_keys(const std::vector<ListedKey>& keys) {
    Words names;
    Words holds;
    for (const auto& key : keys) {
        if (!key.given) {
            names.push_back(key.key);
            holds.push_back(key.value.empty() ? key.origin
                                              : fmt::format("{}; {}", key.value, key.origin));
        }
    }
    return {.name = "silent",
            .title = "Not given",
            .columns = {{.name = "key", .heading = "key", .unit = "", .points = names},
                        {.name = "holds", .heading = "what holds", .unit = "", .points = holds}}};
}

Series limits_of_keys(const std::vector<ListedKey>& keys) {
    Words names;
    Words limits;
    for (const auto& key : keys) {
        if (!key.limits.empty()) {
            names.push_back(key.key);
            limits.push_back(key.limits);
        }
    }
    return {.name = "limits",
            .title = "What each key takes",
            .columns = {{.name = "key", .heading = "key", .unit = "", .points = names},
                        {.name = "takes", .heading = "takes", .unit = "", .points = limits}}};
}

PinnedFinding warning(const units::Error& error) {
    return {.finding = {.severity = scenario::Severity::caution,
                        .where = error.line > 0
                                     ? fmt::format("line {}, {}", error.line, error.where)
                                     : error.where,
                        .text = error.found + ".",
                        .mend = error.remedy,
                        .source = "the scenario file"}};
}

}  // namespace

Answer read_answer(const scenario::ReadScenario& read, const std::vector<outage::LoadUse>& loads) {
    const auto keys = scenario::listing(read);
    const auto given = std::ranges::count_if(keys, &ListedKey::given);
    Answer answer{
        .question = "read",
        .title = read.scenario.title,
        .sentences = {sentence(read)},
        .values = {{"file", "file", {read.file_name}},
                   {"given", "keys given", {static_cast<std::int64_t>(given)}},
                   {"silent", "keys not given", {static_cast<std::int64_t>(keys.size()) - given}},
                   {"warnings", "warnings", {static_cast<std::int64_t>(read.warnings.size())}}},
        .findings = {},
        .working = {},
        .assumptions = {},
        .cautions = {},
        .series = {given_keys(keys)},
        .days = {},
        .closing = std::string(closing_line),
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
