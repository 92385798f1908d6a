// A scenario on paper, as a vector PDF whose text can be searched.
#pragma once

#include <QByteArray>
#include <QDate>
#include <QList>
#include <QString>

#include "print/card_layout.hpp"
#include "print/report/report_layout.hpp"
#include "print/sheet.hpp"
#include "scenario/file/read.hpp"
#include "scenario/file/saving.hpp"
#include "units/result.hpp"

namespace printing {

enum class Kind { card, report, wiring };

//   today   stands on the sheet as the day it was made
//   language   of all its words, with the units and the clock of whoever reads it
//   fails   with what cannot be answered or does not fit
[[nodiscard]] units::Result<QList<Sheet>> sheets_of(
    const scenario::ReadScenario& read, Kind kind, Paper paper, QDate today,
    const words::Language& language = words::english());

// Every question of the file alone with its answer, or why there is none.
//   made   by what and on which day
[[nodiscard]] Book book_of(const scenario::ReadScenario& read, std::string made);

// As everything is saved: whole, or not at all.
[[nodiscard]] scenario::Saving write_file(const QByteArray& bytes, const QString& path);

// The sheets as one PDF. May be called off the screen's thread.
[[nodiscard]] QByteArray in_pdf(const QList<Sheet>& sheets, const QString& title);

// Likewise, to a file.
[[nodiscard]] scenario::Saving write_pdf(const QList<Sheet>& sheets, const QString& title,
                                         const QString& path);

}  // namespace printing
