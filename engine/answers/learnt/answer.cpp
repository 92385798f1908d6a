#include "answers/learnt/answer.hpp"

#include "answers/checked.hpp"
#include "answers/clock_words.hpp"

namespace answers {

namespace {

using estimate::Learnt;
using estimate::LearntValue;
using words::Said;
using words::said;
using words::said_of;

Said in_words(const estimate::InFile& value) {
    constexpr int digits = 6;  // as in the file
    return said<"{n} {unit}">(words::Number{.value = value.number, .digits = digits}, value.unit);
}

Value value_of(const estimate::InFile& value) {
    return {Code{value.text(), in_words(value)}};
}

Said offered(const LearntValue& value) {
    return said<"{key}: {in_file} in the file, {likely} learnt (between {low} and {high}).">(
        value.key, in_words(value.in_file), in_words(value.likely), in_words(value.low),
        in_words(value.high));
}

Said first_sentence(const Learnt& learnt) {
    if (learnt.contradicted)
        return said<
            "The readings contradict each other, so nothing can be learnt of them: the answer "
            "about "
            "now says which; strike the wrong one.">();
    if (learnt.readings == 0)
        return said<"Nothing was read in this outage yet, so nothing was learnt.">();
    if (learnt.values.empty())
        return said_of<"Nothing was learnt that the file does not know: {n} reading says no more.",
                       "Nothing was learnt that the file does not know: {n} readings say no more.">(
            words::in_words(learnt.readings));
    return said_of<"{n} value of the file could be better known. Nothing is written unasked.",
                   "{n} values of the file could be better known. Nothing is written unasked.">(
        std::int64_t(learnt.values.size()));
}

}  // namespace

Said where_it_came_from(const scenario::Scenario& scenario, const Learnt& learnt,
                        const LearntValue& value) {
    return said_of<
        "learnt in the outage of {date}, {n} reading: {factor} of what was here, "
        "{in_file}; of that season alone",
        "learnt in the outage of {date}, {n} readings: {factor} of what was here, "
        "{in_file}; of that season alone">(date_in_words(scenario.outage.starts), learnt.readings,
                                           words::with_decimals(value.factor, 2),
                                           in_words(value.in_file));
}

Answer learnt_answer(const scenario::Scenario& scenario, const Learnt& learnt,
                     const std::optional<LearntValue>& taken) {
    Answer answer = checked_answer("learnt", scenario, {}, {});
    if (taken)
        answer.sentences.push_back(
            said<"Written into the file: {key} = \"{value}\".">(taken->key, taken->likely.text()));
    answer.sentences.push_back(first_sentence(learnt));
    List values;
    for (const LearntValue& value : learnt.values) {
        answer.sentences.push_back(offered(value));
        values.push_back(
            {Members{{"key", said<"key">(), {value.key}},
                     {"in_file", said<"in the file">(), value_of(value.in_file)},
                     {"learnt",
                      said<"learnt">(),
                      {Members{{"low", said<"at least">(), value_of(value.low)},
                               {"likely", said<"most likely">(), value_of(value.likely)},
                               {"high", said<"at most">(), value_of(value.high)}}}},
                     {"from", said<"from">(), {where_it_came_from(scenario, learnt, value)}}}});
    }
    answer.sentences.push_back(
        said<"Until {when} the loads drew {actual} most likely; the plan had {planned}.">(
            weekday_and_time(learnt.until), in_words(learnt.actual), in_words(learnt.planned)));
    answer.values = {{"values", said<"offered">(), {std::move(values)}, true},
                     {"energy",
                      said<"energy of the loads">(),
                      {Members{{"planned", said<"planned">(), value_of(learnt.planned)},
                               {"actual", said<"actual">(), value_of(learnt.actual)}}}},
                     {"until", said<"until">(), time_value(learnt.until)},
                     {"readings", said<"readings">(), {std::int64_t(learnt.readings)}}};
    answer.working = {{said<"Energy">(), said<"of the loads, planned">(), shown(learnt.planned), "",
                       said<"the file">()},
                      {said<"Energy">(), said<"of the loads, most likely">(), shown(learnt.actual),
                       "estimate method.md (21)", said<"the log">()}};
    for (const LearntValue& value : learnt.values)
        answer.working.push_back({said<"Learnt">(), said<"{key}, of what the file has">(value.key),
                                  plain_number(value.factor, 2), "estimate method.md (21)",
                                  said<"the log">()});
    return answer;
}

}  // namespace answers
