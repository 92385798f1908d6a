#include "models/words/finding_text.hpp"

#include <QObject>

#include "models/words/told.hpp"
#include "scenario/finding.hpp"

namespace touch {

QString words_of(std::string_view utf8) {
    return QString::fromUtf8(utf8.data(), static_cast<qsizetype>(utf8.size()));
}

QString words_of(const words::Said& said) {
    return told(said);
}

QString mark_of(scenario::Severity severity) {
    return words_of(answers::word_for(severity));
}

QString word_of(scenario::Severity severity) {
    switch (severity) {
        case scenario::Severity::stop:
            return told(words::said<"STOP">());
        case scenario::Severity::caution:
            return told(words::said<"CAUTION">());
        case scenario::Severity::note:
            break;
    }
    return told(words::said<"NOTE">());
}

FindingText finding_text(const scenario::Finding& finding) {
    return {.mark = mark_of(finding.severity),
            .word = word_of(finding.severity),
            .where = words_of(finding.where),
            .text = told(finding.text),
            .mend = told(finding.mend),
            .source = words_of(finding.source)};
}

QString spoken_of(const FindingText& finding) {
    return finding.where.isEmpty()
               ? QStringLiteral("%1. %2 %3").arg(finding.word, finding.text, finding.mend)
               : QStringLiteral("%1. %2. %3 %4")
                     .arg(finding.word, finding.where, finding.text, finding.mend);
}

QList<FindingText> defect_texts(const answers::Answer& answer) {
    if (!answer.defect) return {};
    return {{.mark = mark_of(scenario::Severity::stop),
             .word = word_of(scenario::Severity::stop),
             .where = QObject::tr("this program"),
             .text = told(*answer.defect),
             .mend = {},
             .source = {}}};
}

QList<FindingText> caution_texts(const answers::Answer& answer) {
    QList<FindingText> texts;
    for (const answers::Caution& caution : answer.cautions) {
        texts.append({.mark = mark_of(scenario::Severity::caution),
                      .word = words_of(caution.hazard),
                      .where = {},
                      .text = told(caution.text),
                      .mend = {},
                      .source = words_of(caution.source)});
    }
    return texts;
}

QList<FindingText> assumption_texts(const answers::Answer& answer) {
    QList<FindingText> texts;
    for (const scenario::Assumption& assumption : answer.assumptions) {
        texts.append({.mark = {},
                      .word = words_of(scenario::place_of(assumption)),
                      .where = {},
                      .text = told(assumption.text),
                      .mend = words_of(assumption.source),
                      .source = words_of(assumption.source)});
    }
    return texts;
}

QList<FindingText> error_texts(const units::Errors& errors, scenario::Severity severity) {
    QList<FindingText> texts;
    for (const units::Error& error : errors) {
        const QString line =
            error.line > 0 ? told(words::said<"line {number}">(error.line)) : QString();
        QStringList where{words_of(error.where), line};
        where.removeAll(QString());
        texts.append({.mark = mark_of(severity),
                      .word = word_of(severity),
                      .where = where.join(QStringLiteral(", ")),
                      .text = words_of(error.found),
                      .mend = words_of(error.remedy),
                      .source = {}});
    }
    return texts;
}

}  // namespace touch
