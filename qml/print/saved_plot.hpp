// Each plot of a scenario's answers, to be saved as a drawing or as the numbers behind it.
#pragma once

#include <QByteArray>
#include <QList>
#include <QString>

#include "print/sheet.hpp"
#include "scenario/file/read.hpp"
#include "scenario/file/saving.hpp"
#include "words/language.hpp"

namespace printing {

struct SavedPlot {
    QString name;   // within a file's name, in every language: "outage days"
    QString title;  // for people
    Sheet drawing;
    QByteArray numbers;  // CSV
};

// Of every question that can be asked of the file alone and is answered at once; how many packs to
// build takes seconds and is asked for by itself.
[[nodiscard]] QList<SavedPlot> plots_to_save(const scenario::ReadScenario& read,
                                             const words::Language& language = words::english());
[[nodiscard]] QList<SavedPlot> builds_to_save(const scenario::ReadScenario& read,
                                              const words::Language& language = words::english());

// As CSV where the path ends in .csv, as SVG otherwise.
[[nodiscard]] scenario::Saving write_plot(const SavedPlot& plot, const QString& path);

}  // namespace printing
