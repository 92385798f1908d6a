#include "answers/learnt/answer.hpp"

#include <fmt/format.h>

#include "answers/checked.hpp"
#include "answers/clock_words.hpp"

namespace answers {

namespace {

using estimate::Learnt;
using estimate::LearntValue;

std::string offered(const LearntValue& value) {
    return fmt::format("{}: {} in the file, {} learnt (between {} and {}).", value.key,
                       value.in_file, value.likely, value.low, value.high);
}

std::string first_sentence(const Learnt& learnt) {
    if (learnt.contradicted)
        return "The readings contradict each other, so nothing can be learnt of them: ask now "
               "which, "
               "and strike the wrong one.";
    if (learnt.values.empty())
        return fmt::format("Nothing was learnt that the file does not know: {} {} say no more.",
                           number_in_words(learnt.readings),
                           learnt.readings == 1 ? "reading" : "readings");
    return fmt::format("{} {} of the file could be better known. Nothing is written unasked.",
                       learnt.values.size(), learnt.values.size() == 1 ? "value" : "values");
}

}  // namespace

std::string where_it_came_from(const scenario::Scenario& scenario, const Learnt& learnt,
                               const LearntValue& value) {
    return fmt::format(
        "learnt in the outage of {}, {} {}: {:.2f} of what stood here, {}; of that "
        "season alone",
        date_in_words(scenario.outage.starts), learnt.readings,
        learnt.readings == 1 ? "reading" : "readings", value.factor, value.in_file);
}

Answer learnt_answer(const scenario::Scenario& scenario, const Learnt& learnt,
                     const std::optional<LearntValue>& taken) {
    Answer answer = checked_answer("learnt", scenario, {}, {});
    if (taken)
        answer.sentences.push_back(
            fmt::format("Written into the file: {} = \"{}\".", taken->key, taken->likely));
    answer.sentences.push_back(first_sentence(learnt));
    List values;
    for (const LearntValue& value : learnt.values) {
        answer.sentences.push_back(offered(value));
        values.push_back(
            {Members{{"key", "key", {value.key}},
                     {"in_file", "in the file", {value.in_file}},
                     {"learnt",
                      "learnt",
                      {Members{{"low", "at least", {value.low}},
                               {"likely", "most likely", {value.likely}},
                               {"high", "at most", {value.high}}}}},
                     {"from", "from", {where_it_came_from(scenario, learnt, value)}}}});
    }
    answer.sentences.push_back(fmt::format(
        "Until {} the loads drew {} most likely; the plan had {}.", weekday_and_time(learnt.until),
        in_words(learnt.actual), in_words(learnt.planned)));
    answer.values = {{"values", "offered", {std::move(values)}, true},
                     {"energy",
                      "energy of the loads",
                      {Members{{"planned", "planned", value_of(learnt.planned)},
                               {"actual", "actual", value_of(learnt.actual)}}}},
                     {"until", "until", {time_in_iso(learnt.until)}},
                     {"readings", "readings", {std::int64_t(learnt.readings)}}};
    answer.working = {{"Energy", "of the loads, planned", shown(learnt.planned), "", "the file"},
                      {"Energy", "of the loads, most likely", shown(learnt.actual),
                       "estimate method.md (21)", "the log"}};
    for (const LearntValue& value : learnt.values)
        answer.working.push_back({"Learnt",
                                  value.key + ", of what the file has",
                                  {value.factor, "1", fmt::format("{:.2f}", value.factor)},
                                  "estimate method.md (21)",
                                  "the log"});
    return answer;
}

}  // namespace answers
