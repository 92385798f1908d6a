// What can be printed or saved of the scenario on the screen: the card, the report, the wiring, and
// each plot with its numbers.
#pragma once

#include <functional>
#include <memory>

#include <QObject>
#include <QString>
#include <QUrl>
#include <QVariantList>
#include <QtQml/qqmlregistration.h>

#include "models/file/scenario_document.hpp"
#include "models/latest_run.hpp"
#include "print/headless.hpp"
#include "print/saved_plot.hpp"

namespace touch {

// The pages of a sheet, to look at and to save; or why there are none.
struct Desk {
    QString title;
    QList<printing::Sheet> sheets;
    QByteArray pdf;
    QString trouble;
};

class PrintDesk : public QObject {
    Q_OBJECT
    QML_ELEMENT
    Q_PROPERTY(
        touch::ScenarioDocument* document READ document WRITE set_document NOTIFY askedChanged)
    Q_PROPERTY(QString sheet READ sheet WRITE set_sheet NOTIFY askedChanged)  // "card", "report" …
    Q_PROPERTY(QString paper READ paper WRITE set_paper NOTIFY askedChanged)  // "a4", "letter"
    // The sheet is being made: what is shown is still the one before.
    Q_PROPERTY(bool making READ making NOTIFY busyChanged)
    // As `making`, or the plots are.
    Q_PROPERTY(bool busy READ busy NOTIFY busyChanged)
    Q_PROPERTY(int pages READ pages NOTIFY shown)
    // Why there is nothing to print, in plain words.
    Q_PROPERTY(QString trouble READ trouble NOTIFY shown)
    // What the last saving did, in plain words.
    Q_PROPERTY(QString told READ told NOTIFY toldChanged)
    Q_PROPERTY(bool failed READ failed NOTIFY toldChanged)
    // {name, title}, as savePlot takes the name.
    Q_PROPERTY(QVariantList plots READ plots NOTIFY plotted)

  public:
    explicit PrintDesk(QObject* parent = nullptr);

    [[nodiscard]] ScenarioDocument* document() const { return document_; }
    void set_document(ScenarioDocument* document);
    [[nodiscard]] QString sheet() const { return sheet_; }
    void set_sheet(const QString& sheet);
    [[nodiscard]] QString paper() const { return paper_; }
    void set_paper(const QString& paper);
    [[nodiscard]] bool making() const { return making_.running(); }
    [[nodiscard]] bool busy() const {
        return making() || plotting_.running() || building_.running();
    }
    [[nodiscard]] int pages() const { return static_cast<int>(desk_->sheets.size()); }
    [[nodiscard]] QString trouble() const { return desk_->trouble; }
    [[nodiscard]] QString told() const { return told_; }
    [[nodiscard]] bool failed() const { return failed_; }
    [[nodiscard]] QVariantList plots() const;
    // Never null.
    [[nodiscard]] const std::shared_ptr<const Desk>& desk() const { return desk_; }

    // Where a file would lie well: beside the scenario, and named after it.
    //   takes   what: "card" or a plot's name; kind: "pdf", "svg", "csv"
    Q_INVOKABLE QUrl suggested(const QString& what, const QString& kind) const;
    // True when the file was written; `told` says so either way.
    Q_INVOKABLE bool save(const QUrl& file);
    // {name, detail} of each printer the system knows, the usual one first.
    Q_INVOKABLE QVariantList printers() const;
    // True when the pages were handed to that printer; `told` says so either way.
    Q_INVOKABLE bool print(const QString& printer);
    // As a drawing ("svg") or as numbers ("csv").
    Q_INVOKABLE bool savePlot(const QString& name, const QString& kind, const QUrl& file);

  signals:
    void askedChanged();
    void busyChanged();
    void shown();
    void plotted();
    void toldChanged();

  private:
    void ask_sheets();
    void ask_plots();
    bool tell(const QString& words, bool failed);
    // Writes where nothing stands in the way, and tells how that went.
    bool write(const QUrl& file, const QString& kind,
               const std::function<scenario::Saving(const QString& path)>& writer);
    void tell_fault(const QString& what);

    ScenarioDocument* document_ = nullptr;
    QString sheet_ = QStringLiteral("card");
    QString paper_;
    QString told_;
    bool failed_ = false;
    std::shared_ptr<const Desk> desk_;
    std::shared_ptr<const QList<printing::SavedPlot>> plots_;
    std::shared_ptr<const QList<printing::SavedPlot>> builds_;  // come later: they take longer
    LatestRun<Desk> making_;
    LatestRun<QList<printing::SavedPlot>> plotting_;
    LatestRun<QList<printing::SavedPlot>> building_;
};

}  // namespace touch
