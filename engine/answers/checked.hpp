// What the answers of all checks are made of in the same way.
#pragma once

#include <string>

#include "answers/answer.hpp"
#include "answers/cautions.hpp"
#include "answers/shown.hpp"
#include "scenario/finding.hpp"
#include "scenario/scenario.hpp"

namespace answers {

template <units::Written Written>
[[nodiscard]] Value value_of(Written quantity, int significant = 3) {
    return quantity_or_reason(shown(quantity, significant), "the number is not finite");
}

// "0.28 V", also below a volt: what a voltmeter shows.
[[nodiscard]] words::Said in_volts(units::Voltage voltage);

// "2026-09-01"
[[nodiscard]] std::string date_in_iso(units::LocalTime time);
// "1 September 2026"
[[nodiscard]] words::Said date_in_words(units::LocalTime time);

// Findings of a check as whole sentences, worst first.
[[nodiscard]] std::vector<PinnedFinding> as_sentences(const scenario::Findings& findings);

// An answer with everything but its sentences, values, working and series.
[[nodiscard]] Answer checked_answer(std::string question, const scenario::Scenario& scenario,
                                    const scenario::Findings& findings,
                                    const scenario::Assumptions& assumptions);

}  // namespace answers
