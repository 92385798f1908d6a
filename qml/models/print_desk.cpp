#include "models/print_desk.hpp"

#include <utility>

#include <QDate>
#include <QFileInfo>
#include <QLocale>
#include <QRegularExpression>
#include <QVariantMap>

#include "models/fields/weather_choices.hpp"
#include "models/file/file_name.hpp"
#include "models/words/saved_words.hpp"
#include "models/words/told.hpp"
#include "print/printer.hpp"

namespace touch {

namespace {

Desk desk_of(const QString& text, const QString& file, printing::Kind kind, printing::Paper paper) {
    const auto read = read_shown(text, file);
    if (!read) return {{}, {}, {}, told(units::in_words(read.error().front()))};
    auto sheets = printing::sheets_of(*read, kind, paper, QDate::currentDate(), language_wished());
    if (!sheets) return {{}, {}, {}, told(units::in_words(sheets.error().front()))};
    const QString title = QString::fromStdString(read->scenario.title);
    QByteArray pdf = printing::in_pdf(*sheets, title);
    return {title, std::move(*sheets), std::move(pdf), {}};
}

QList<printing::SavedPlot> plots_of(
    const QString& text, const QString& file,
    QList<printing::SavedPlot> (*plots)(const scenario::ReadScenario& read,
                                        const words::Language& language)) {
    const auto read = read_shown(text, file);
    if (!read) return {};
    return plots(*read, language_wished());
}

QString with_ending(const QString& path, const QString& kind) {
    const QString ending = QLatin1Char('.') + kind;
    return path.endsWith(ending, Qt::CaseInsensitive) ? path : path + ending;
}

}  // namespace

PrintDesk::PrintDesk(QObject* parent)
    : QObject(parent),
      paper_(QLocale::system().measurementSystem() == QLocale::ImperialUSSystem
                 ? QStringLiteral("letter")
                 : QStringLiteral("a4")),
      desk_(std::make_shared<const Desk>()),
      plots_(std::make_shared<const QList<printing::SavedPlot>>()),
      builds_(std::make_shared<const QList<printing::SavedPlot>>()),
      making_(
          [this](std::shared_ptr<const Desk> desk) {
              desk_ = std::move(desk);
              emit shown();
          },
          [this] { emit busyChanged(); },
          [this](const QString& what) {
              desk_ = std::make_shared<const Desk>(Desk{{}, {}, {}, fault_in_words(what)});
              emit shown();
              tell_fault(what);
          }),
      plotting_(
          [this](std::shared_ptr<const QList<printing::SavedPlot>> plots) {
              plots_ = std::move(plots);
              emit plotted();
          },
          [this] { emit busyChanged(); }, [this](const QString& what) { tell_fault(what); }),
      building_(
          [this](std::shared_ptr<const QList<printing::SavedPlot>> builds) {
              builds_ = std::move(builds);
              emit plotted();
          },
          [this] { emit busyChanged(); }, [this](const QString& what) { tell_fault(what); }) {}

void PrintDesk::set_document(ScenarioDocument* document) {
    if (document_ == document) return;
    if (document_) document_->disconnect(this);
    document_ = document;
    if (document_) {
        connect(document_, &ScenarioDocument::textChanged, this, &PrintDesk::ask_sheets);
        connect(document_, &ScenarioDocument::textChanged, this, &PrintDesk::ask_plots);
    }
    emit askedChanged();
    ask_sheets();
    ask_plots();
}

void PrintDesk::set_sheet(const QString& sheet) {
    if (sheet_ == sheet || !printing::kind_named(sheet)) return;
    sheet_ = sheet;
    emit askedChanged();
    tell({}, false);
    ask_sheets();
}

void PrintDesk::set_paper(const QString& paper) {
    if (paper_ == paper || !printing::paper_named(paper)) return;
    paper_ = paper;
    emit askedChanged();
    tell({}, false);
    ask_sheets();
}

QVariantList PrintDesk::plots() const {
    QVariantList plots;
    for (const printing::SavedPlot& plot : *plots_ + *builds_)
        plots << QVariantMap{{QStringLiteral("name"), plot.name},
                             {QStringLiteral("title"), plot.title}};
    return plots;
}

QUrl PrintDesk::suggested(const QString& what, const QString& kind) const {
    const QString path = document_ ? document_->path() : QString();
    const QString folder = path.isEmpty() ? folder_of_papers() : QFileInfo(path).absolutePath();
    QString name = path.isEmpty() ? what : QFileInfo(path).completeBaseName() + ' ' + what;
    // "wiring wiring" says it once.
    static const QRegularExpression said_twice(QStringLiteral("\\b(\\w+) (?=\\1\\b)"));
    static const QRegularExpression in_no_name(QStringLiteral("[/\\\\:*?\"<>|]"));
    name.remove(said_twice).replace(in_no_name, QStringLiteral("-"));
    return QUrl::fromLocalFile(folder + '/' + with_ending(name, kind));
}

bool PrintDesk::save(const QUrl& file) {
    if (making() || desk_->sheets.isEmpty()) return tell(tr("There is nothing to save yet."), true);
    return write(file, QStringLiteral("pdf"),
                 [this](const QString& path) { return printing::write_file(desk_->pdf, path); });
}

QVariantList PrintDesk::printers() const {
    QVariantList printers;
    for (const printing::PrinterFound& printer : printing::printers_found())
        printers << QVariantMap{{QStringLiteral("name"), printer.name},
                                {QStringLiteral("detail"), printer.about}};
    return printers;
}

bool PrintDesk::print(const QString& printer) {
    if (making() || desk_->sheets.isEmpty()) return tell(tr("There is nothing to print yet."), true);
    if (!printing::print_on(printer, desk_->sheets, desk_->title))
        return tell(tr("Not printed: %1 takes nothing.").arg(printer), true);
    return tell(tr("Sent to %1.").arg(printer), false);
}

bool PrintDesk::savePlot(const QString& name, const QString& kind, const QUrl& file) {
    for (const printing::SavedPlot& plot : *plots_ + *builds_)
        if (plot.name == name)
            return write(file, kind,
                         [&](const QString& path) { return printing::write_plot(plot, path); });
    return tell(tr("There is no such plot any more."), true);
}

void PrintDesk::ask_sheets() {
    if (!document_ || document_->text().isEmpty()) return;
    making_.request([text = document_->text(), file = document_->path(),
                     kind = printing::kind_named(sheet_).value_or(printing::Kind::card),
                     paper = printing::paper_named(paper_).value_or(printing::Paper::a4)] {
        return desk_of(text, file, kind, paper);
    });
}

void PrintDesk::ask_plots() {
    if (!document_ || document_->text().isEmpty()) return;
    plotting_.request([text = document_->text(), file = document_->path()] {
        return plots_of(text, file, printing::plots_to_save);
    });
    builds_ =
        std::make_shared<const QList<printing::SavedPlot>>();  // none rather than of another text
    emit plotted();
    building_.request([text = document_->text(), file = document_->path()] {
        return plots_of(text, file, printing::builds_to_save);
    });
}

void PrintDesk::tell_fault(const QString& what) {
    if (document_) document_->tell_fault(what, false);
}

bool PrintDesk::tell(const QString& words, bool failed) {
    told_ = words;
    failed_ = failed;
    emit toldChanged();
    return !failed_;
}

bool PrintDesk::write(const QUrl& file, const QString& kind,
                      const std::function<scenario::Saving(const QString& path)>& writer) {
    if (!file.isLocalFile())
        return tell(tr("Not saved: only a folder of this computer will do."), true);
    const QString chosen = file.toLocalFile();
    const QString path = with_ending(chosen, kind);
    const QString folder = QFileInfo(path).absolutePath();
    if (!QFileInfo(folder).isDir())
        return tell(tr("Not saved: there is no folder %1.").arg(folder), true);
    if (!QFileInfo(folder).isWritable())
        return tell(
            tr("Not saved: the folder %1 may not be written to. Choose another.").arg(folder),
            true);
    // The dialog asked about the name that was typed, not about this one.
    if (path != chosen && QFileInfo::exists(path))
        return tell(tr("Not saved: %1 is there already. Type its name with .%2 to replace it.")
                        .arg(path, kind),
                    true);
    const scenario::Saving saving = writer(path);
    if (!saving.saved())
        return tell(
            tr("Not saved: %1 could not be written: %2.").arg(path, reason_in_words(saving)), true);
    return tell(tr("Saved as %1").arg(path), false);
}

}  // namespace touch
