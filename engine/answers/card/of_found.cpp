#include <fmt/format.h>

#include "answers/answer_of.hpp"
#include "answers/card/lid_card.hpp"

namespace answers {

namespace {

template <class Found>
units::Result<Answer> told(const units::Result<Found>& found) {
    if (!found) return units::fail(found.error());
    return answer_of(*found);
}

std::string why_no_reading(const questions::CardFound& found) {
    if (!found.readings.empty()) return "";
    if (found.unreadable.empty()) return "There are no packs to read.";
    return "The voltage tells nothing here: " + found.unreadable.front().found + ".";
}

}  // namespace

CardAnswers card_answers(const questions::CardFound& found) {
    CardAnswers answers{.outage = told(found.outage),
                        .ration = found.ration,
                        .wiring = told(found.wiring),
                        .storage = told(found.storage),
                        .joins = {},
                        .readings = {},
                        .no_reading = why_no_reading(found)};
    for (const auto& join : found.joins)
        answers.joins.push_back(told(join));
    for (const auto& reading : found.readings)
        answers.readings.push_back(
            {fmt::format("{}{:.1f} V", reading.or_more ? "≥ " : "", reading.reads / units::volt),
             answer_of(reading.found)});
    return answers;
}

}  // namespace answers
