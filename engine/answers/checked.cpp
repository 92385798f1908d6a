#include "answers/checked.hpp"

#include <array>
#include <cctype>

#include <fmt/format.h>

#include "units/clock.hpp"

namespace answers {

namespace {

std::string as_sentence(std::string words) {
    if (words.empty()) {
        return words;
    }
    words.front() = static_cast<char>(std::toupper(static_cast<unsigned char>(words.front())));
    if (words.back() != '.') {
        words += '.';
    }
    return words;
}

}  // namespace

std::string in_volts(units::Voltage voltage) {
    return fmt::format("{:.2f} V", voltage / units::volt);
}

std::string date_in_iso(units::LocalTime time) {
    return units::print(units::midnight_before(time)).substr(0, 10);
}

std::string date_in_words(units::LocalTime time) {
    constexpr std::array months{"January",   "February", "March",    "April",
                                "May",       "June",     "July",     "August",
                                "September", "October",  "November", "December"};
    const auto date = units::date_of(time);
    return fmt::format("{} {} {}", static_cast<unsigned>(date.day()),
                       months.at(static_cast<unsigned>(date.month()) - 1),
                       static_cast<int>(date.year()));
}

std::vector<PinnedFinding> as_sentences(const scenario::Findings& findings) {
    std::vector<PinnedFinding> pinned;
    for (auto finding : findings) {
        finding.text = as_sentence(std::move(finding.text));
        finding.mend = as_sentence(std::move(finding.mend));
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
            .closing = std::string(closing_line),
            .defect = {}};
}

}  // namespace answers
