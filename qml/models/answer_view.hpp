// What a page shows of any answer of the report: finished words. Made off the screen's thread.
#pragma once

#include <memory>

#include <QList>
#include <QString>
#include <QStringList>

#include "answers/answer.hpp"
#include "models/words/finding_text.hpp"
#include "scenario/file/read.hpp"

namespace touch {

// One figure with its name.
struct RowText {
    QString section;  // rows of one section stand together
    QString label;
    QString value;
    QString detail;  // formula and source; why there is no value
};

// A table of the answer; every row has as many cells as there are headings.
struct TableText {
    QString name;
    QString title;
    QStringList headings;
    QList<QStringList> rows;
};

struct AnswerView {
    bool answered = false;  // false: `findings` says why not
    bool stopped = false;   // before its end: nothing to show
    bool coarse = false;    // a first picture; a better one follows
    QString sentence;
    QString rest;  // further sentences
    QList<FindingText> findings;
    QList<FindingText> cautions;
    QList<FindingText> assumptions;
    QList<RowText> figures;
    QList<RowText> working;
    QList<TableText> tables;
    QString closing;
    std::shared_ptr<const answers::Answer> answer;  // null when not answered
};

[[nodiscard]] AnswerView answer_view_of(answers::Answer answer, const units::Errors& warnings = {});

// Why the question cannot be answered for this file.
[[nodiscard]] AnswerView no_answer(const units::Errors& errors);

// The members of an answer as rows, in their order; members of members under the label of the
// outer one.
[[nodiscard]] QList<RowText> figures_of(const answers::Members& members);

[[nodiscard]] QList<RowText> working_of(const answers::Answer& answer);

[[nodiscard]] TableText table_of(const answers::Series& series);

}  // namespace touch
