// One finding, hazard or assumption as a screen shows it: finished words.
#pragma once

#include <QList>
#include <QString>

#include "answers/answer.hpp"
#include "units/result.hpp"

namespace touch {

struct FindingText {
    QString mark;  // "stop", "caution", "note", or empty
    QString word;
    QString where;
    QString text;
    QString mend;
    QString source;
    int pin = 0;  // number of its pin on the plot; 0 when it has no hour
};

[[nodiscard]] QString words_of(std::string_view utf8);
// In the language of the screen, as told.
[[nodiscard]] QString words_of(const words::Said& said);
[[nodiscard]] inline QString words_of(const std::string& utf8) {
    return words_of(std::string_view(utf8));
}
[[nodiscard]] inline QString words_of(const char* utf8) {
    return words_of(std::string_view(utf8));
}

[[nodiscard]] QString mark_of(scenario::Severity severity);
[[nodiscard]] QString word_of(scenario::Severity severity);

[[nodiscard]] FindingText finding_text(const scenario::Finding& finding);

// All of it in one breath, for a screen reader.
[[nodiscard]] QString spoken_of(const FindingText& finding);

// A fault of ours goes first: no number on the page may be relied on.
[[nodiscard]] QList<FindingText> defect_texts(const answers::Answer& answer);
// Hazards that the scenario touches; the word names the hazard.
[[nodiscard]] QList<FindingText> caution_texts(const answers::Answer& answer);
// The word is the key that was silent, the mend its source.
[[nodiscard]] QList<FindingText> assumption_texts(const answers::Answer& answer);
// Why a file cannot be used, each reason with its key and line.
[[nodiscard]] QList<FindingText> error_texts(const units::Errors& errors,
                                             scenario::Severity severity);

}  // namespace touch
