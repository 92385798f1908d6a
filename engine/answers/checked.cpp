#include "answers/checked.hpp"

#include "units/clock.hpp"
#include "units/said.hpp"

namespace answers {

using words::Said;
using words::said;

Said in_volts(units::Voltage voltage) {
    return said<"{voltage}">(units::amount_in(voltage, "V", 2));
}

std::string date_in_iso(units::LocalTime time) {
    return units::print(units::midnight_before(time)).substr(0, 10);
}

Said date_in_words(units::LocalTime time) {
    const auto midnight = units::midnight_before(time);
    return said<"{date}">(units::moment(midnight, words::Moment::Form::full_date));
}

std::vector<PinnedFinding> as_sentences(const scenario::Findings& findings) {
    std::vector<PinnedFinding> pinned;
    for (auto finding : findings) {
        finding.text = words::as_sentence(std::move(finding.text));
        finding.mend = words::as_sentence(std::move(finding.mend));
        pinned.push_back({.finding = std::move(finding)});
    }
    sort_by_weight(pinned);
    return pinned;
}

Answer checked_answer(std::string question, const scenario::Scenario& scenario,
                      const scenario::Findings& findings,
                      const scenario::Assumptions& assumptions) {
    return {.question = std::move(question),
            .title = scenario.title,
            .sentences = {},
            .values = {},
            .findings = as_sentences(findings),
            .working = {},
            .assumptions = assumptions,
            .cautions = cautions_for(scenario),
            .series = {},
            .days = {},
            .closing = closing_line(),
            .defect = {}};
}

}  // namespace answers
