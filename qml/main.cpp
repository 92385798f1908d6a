// candlemark-touch [FILE]: the plan on a screen for fingers and keys; with --print, on paper.
#include <algorithm>
#include <cstdio>
#include <exception>
#include <string_view>

#include "models/kept_work.hpp"
#include "print/headless.hpp"
#include "print/print_file.hpp"
#include <QApplication>
#include <QBuffer>
#include <QCommandLineParser>
#include <QFileInfo>
#include <QLocale>
#include <QPointer>
#include <QQmlApplicationEngine>
#include <QQmlExtensionPlugin>
#include <QQuickWindow>
#include <QTimer>
#include <QUrl>

Q_IMPORT_QML_PLUGIN(CandlemarkPlugin)

namespace {

constexpr int failed = 3;  // a defect of ours, as for the command line

// What nobody caught on the way becomes a fault that the window tells, and the program goes on.
class Application : public QApplication {
  public:
    using QApplication::QApplication;

    void tells_faults_of(touch::ScenarioDocument* document) { document_ = document; }
    bool notify(QObject* receiver, QEvent* event) override {
        try {
            return QApplication::notify(receiver, event);
        } catch (const std::exception& fault) {
            tell(QString::fromUtf8(fault.what()));
        } catch (...) {
            tell({});
        }
        return true;
    }

  private:
    void tell(const QString& what) {
        if (document_)
            document_->tell_fault(what, true);
        else
            QApplication::exit(failed);
    }

    QPointer<touch::ScenarioDocument> document_;
};

struct Wishes {
    QUrl file;
    QString picture;  // where to save a picture of the window, which then closes
    QString theme;
    QString page;
    QSize size;
    double text_scale = 1.0;
    bool prints = false;  // to paper, without a window
    print::Wishes print;
};

QSize size_in(const QString& words) {
    const QStringList sides = words.split(QLatin1Char('x'));
    return sides.size() == 2 ? QSize(sides[0].toInt(), sides[1].toInt()) : QSize();
}

QString usual_paper() {
    return QLocale::system().measurementSystem() == QLocale::ImperialUSSystem
               ? QStringLiteral("letter")
               : QStringLiteral("a4");
}

Wishes read_arguments(const QApplication& application) {
    QCommandLineParser parser;
    parser.setApplicationDescription(
        QApplication::tr("Shows how long a hand-built power unit lasts through an outage."));
    parser.addHelpOption();
    parser.addVersionOption();
    parser.addPositionalArgument(QStringLiteral("FILE"),
                                 QApplication::tr("Scenario to open; an example without it."),
                                 QStringLiteral("[FILE]"));
    const QCommandLineOption picture(QStringLiteral("picture"),
                                     QApplication::tr("Save a picture of the window and close."),
                                     QStringLiteral("PNG"));
    const QCommandLineOption size(QStringLiteral("size"), QApplication::tr("Size of the window."),
                                  QStringLiteral("WIDTHxHEIGHT"), QStringLiteral("1280x800"));
    const QCommandLineOption theme(QStringLiteral("theme"),
                                   QApplication::tr("dark, light or system."),
                                   QStringLiteral("NAME"));
    const QCommandLineOption text_size(QStringLiteral("text-size"),
                                       QApplication::tr("Size of the text, 100 to 200 percent."),
                                       QStringLiteral("PERCENT"), QStringLiteral("100"));
    const QCommandLineOption page(QStringLiteral("page"),
                                  QApplication::tr("Page to begin with, such as days or loads."),
                                  QStringLiteral("NAME"), QStringLiteral("days"));
    const QCommandLineOption to_paper(
        QStringLiteral("print"),
        QApplication::tr("Print FILE to PDF without a window: --print FILE card.pdf."));
    const QCommandLineOption sheet(
        QStringLiteral("sheet"),
        QApplication::tr("What to print: card (for the lid), report or wiring."),
        QStringLiteral("NAME"), QStringLiteral("card"));
    const QCommandLineOption paper(QStringLiteral("paper"), QApplication::tr("a4 or letter."),
                                   QStringLiteral("NAME"), usual_paper());
    parser.addPositionalArgument(QStringLiteral("PDF"),
                                 QApplication::tr("With --print, where to print to."),
                                 QStringLiteral("[PDF]"));
    parser.addOptions({picture, size, theme, text_size, page, to_paper, sheet, paper});
    parser.process(application);

    Wishes wishes;
    if (!parser.positionalArguments().isEmpty()) {
        wishes.file = QUrl::fromLocalFile(
            QFileInfo(parser.positionalArguments().constFirst()).absoluteFilePath());
    }
    wishes.picture = parser.value(picture);
    wishes.theme = parser.value(theme);
    wishes.page = parser.value(page);
    wishes.size = size_in(parser.value(size));
    wishes.prints = parser.isSet(to_paper);
    wishes.print = {.file = parser.positionalArguments().value(0),
                    .pdf = parser.positionalArguments().value(1),
                    .sheet = parser.value(sheet),
                    .paper = parser.value(paper)};
    wishes.text_scale = qBound(1.0, parser.value(text_size).toDouble() / 100.0, 2.0);
    return wishes;
}

bool says(const QObject* object, const char* property) {
    return object && object->property(property).toBool();
}

bool is_at_work(const QQuickWindow* window) {
    const auto* plan = window->property("plan").value<QObject*>();
    const auto* page = window->property("pageItem").value<QObject*>();
    return says(plan, "running") || says(plan, "weighing") || says(page, "busy");
}

// Saves the window once its plan and the page's own answer stand on it, and then a moment later:
// charts lay themselves out over some frames.
void save_picture_when_settled(QQuickWindow* window, const QString& path, bool was_at_work = true) {
    constexpr int moment = 400;  // ms
    QTimer::singleShot(moment, window, [window, path, was_at_work] {
        if (is_at_work(window) || was_at_work) {
            save_picture_when_settled(window, path, is_at_work(window));
            return;
        }
        QByteArray bytes;
        QBuffer buffer(&bytes);
        const bool made =
            buffer.open(QIODevice::WriteOnly) &&
            window->grabWindow().save(&buffer, QFileInfo(path).suffix().isEmpty()
                                                   ? "png"
                                                   : qPrintable(QFileInfo(path).suffix()));
        const scenario::Saving saving = print::write_file(bytes, path);
        if (made && !saving.saved())
            std::fprintf(stderr, "%s\n",
                         units::print(scenario::not_saved(path.toStdString(), saving)).c_str());
        QApplication::exit(made && saving.saved() ? 0 : failed);
    });
}

}  // namespace

int main(int argc, char** argv) {
    if (std::any_of(argv, argv + argc,
                    [](const char* word) { return word == std::string_view("--print"); }))
        print::need_no_display();
    // Qt Charts needs an application made for widgets.
    Application application(argc, argv);
    QApplication::setApplicationName(QStringLiteral("candlemark-touch"));
    QApplication::setApplicationDisplayName(QStringLiteral("Candlemark"));
    QApplication::setApplicationVersion(QStringLiteral(CANDLEMARK_VERSION));
    const Wishes wishes = read_arguments(application);
    if (wishes.prints) return print::print_to_file(wishes.print);

    QQmlApplicationEngine engine;
    engine.addImportPath(QStringLiteral("qrc:/qt/qml"));
    QObject::connect(
        &engine, &QQmlApplicationEngine::objectCreationFailed, &application,
        [] { QApplication::exit(failed); }, Qt::QueuedConnection);
    QVariantMap start{{"file", wishes.file.toString()},
                      {"darkLook", wishes.theme != u"light"},
                      {"theme", wishes.theme},
                      {"textScale", wishes.text_scale},
                      {"page", wishes.page}};
    // A picture is of what was asked for, not of unfinished work.
    if (wishes.picture.isEmpty()) start.insert("workFolder", touch::KeptWork::usualFolder());
    if (wishes.size.isValid()) {
        start.insert("width", wishes.size.width());
        start.insert("height", wishes.size.height());
    }
    engine.setInitialProperties(start);
    engine.load(QUrl(QStringLiteral("qrc:/qt/qml/Candlemark/Main.qml")));
    if (engine.rootObjects().isEmpty()) return failed;
    application.tells_faults_of(
        engine.rootObjects().constFirst()->property("scenario").value<touch::ScenarioDocument*>());
    if (!wishes.picture.isEmpty()) {
        save_picture_when_settled(qobject_cast<QQuickWindow*>(engine.rootObjects().constFirst()),
                                  wishes.picture);
    }
    return QApplication::exec();
}
