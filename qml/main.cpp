// candlemark-touch [FILE]: the plan on a screen for fingers and keys; with --print, on paper.
#include <algorithm>
#include <cstdio>
#include <exception>
#include <string>
#include <string_view>
#include <variant>
#include <vector>

#include "wishes.hpp"
#include <QApplication>
#include <QBuffer>
#include <QFileInfo>
#include <QPointer>
#include <QQmlApplicationEngine>
#include <QQmlExtensionPlugin>
#include <QQuickWindow>
#include <QTimer>
#include <QUrl>

#include "models/file/kept_work.hpp"
#include "models/file/no_network.hpp"
#include "models/now/first_page.hpp"
#include "print/headless.hpp"
#include "print/print_file.hpp"
#include "scenario/file/named_file.hpp"
#include "scenario/file/read.hpp"
#include "scenario/file/saving.hpp"

Q_IMPORT_QML_PLUGIN(CandlemarkPlugin)

namespace {

constexpr int failed = 3;  // a defect of ours, as for the command line

constexpr int unusable = printing::unusable;

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

void tell(const std::string& words) {
    std::fprintf(stderr, "%s\n", words.c_str());
}

void tell(const units::Errors& errors, const words::Language& language) {
    for (const units::Error& error : errors)
        tell(units::print(error, language));
}

std::vector<std::string> paths_of(const QStringList& folders) {
    std::vector<std::string> paths;
    for (const QString& folder : folders)
        paths.push_back(folder.toStdString());
    return paths;
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
        const auto* plan = window->property("plan").value<QObject*>();
        const bool answered = says(plan, "answered");
        if (!answered) tell(plan->property("sentence").toString().toStdString());
        QByteArray bytes;
        QBuffer buffer(&bytes);
        const bool made =
            buffer.open(QIODevice::WriteOnly) &&
            window->grabWindow().save(&buffer, QFileInfo(path).suffix().isEmpty()
                                                   ? "png"
                                                   : qPrintable(QFileInfo(path).suffix()));
        if (!made)
            tell(units::print({.where = "--picture",
                               .found = "no picture of that kind can be made",
                               .remedy = "give a name that ends in .png",
                               .file = path.toStdString()}));
        const scenario::Saving saving =
            made ? printing::write_file(bytes, path) : scenario::Saving{};
        if (made && !saving.saved())
            tell(units::print(scenario::not_saved(path.toStdString(), saving)));
        QApplication::exit(answered && made && saving.saved() ? 0 : unusable);
    });
}

bool is_asked_to_print(int argc, char** argv) {
    return std::any_of(argv, argv + argc,
                       [](const char* word) { return word == std::string_view("--print"); });
}

void name_the_program() {
    QApplication::setApplicationName(QStringLiteral("candlemark-touch"));
    QApplication::setApplicationDisplayName(QStringLiteral("Candlemark"));
    QApplication::setApplicationVersion(QStringLiteral(CANDLEMARK_VERSION));
}

// With words. Nobody looks at a picture of a file that is broken or not there.
bool has_nothing_to_picture(const touch::Wishes& wishes) {
    if (wishes.picture.isEmpty() || wishes.file.isEmpty()) return false;
    const auto read = scenario::read_scenario_file(wishes.file.toLocalFile().toStdString());
    if (!read) tell(read.error(), wishes.print.language);
    return !read.has_value();
}

// What Main.qml begins with.
QVariantMap properties_of(const touch::Wishes& wishes) {
    QVariantMap start{{"file", wishes.file.toString()},
                      {"darkLook", wishes.theme != u"light"},
                      {"theme", wishes.theme},
                      {"language", wishes.language},
                      {"units", wishes.units},
                      {"clock", wishes.clock},
                      {"textScale", wishes.text_scale},
                      {"textScaleAsked", wishes.text_scale_asked},
                      {"page", wishes.page}};
    // A picture is of what was asked for, not of unfinished work.
    if (wishes.picture.isEmpty()) start.insert("workFolder", touch::KeptWork::usualFolder());
    if (wishes.size.isValid()) {
        start.insert("width", wishes.size.width());
        start.insert("height", wishes.size.height());
    }
    return start;
}

// The window, until it is closed or its picture is saved.
int show_window(Application& application, const touch::Wishes& wishes) {
    QQmlApplicationEngine engine;
    touch::keep_off_the_network(engine);
    engine.addImportPath(QStringLiteral("qrc:/qt/qml"));
    QObject::connect(
        &engine, &QQmlApplicationEngine::objectCreationFailed, &application,
        [] { QApplication::exit(failed); }, Qt::QueuedConnection);
    if (wishes.page_asked) touch::FirstPage::keep_to_the_page_asked();
    engine.setInitialProperties(properties_of(wishes));
    engine.load(QUrl(QStringLiteral("qrc:/qt/qml/Candlemark/Main.qml")));
    if (engine.rootObjects().isEmpty()) return failed;
    QObject* root = engine.rootObjects().constFirst();
    application.tells_faults_of(root->property("scenario").value<touch::ScenarioDocument*>());
    if (!wishes.picture.isEmpty())
        save_picture_when_settled(qobject_cast<QQuickWindow*>(root), wishes.picture);
    return QApplication::exec();
}

}  // namespace

int main(int argc, char** argv) {
    if (is_asked_to_print(argc, argv)) printing::need_no_display();
    // Qt Charts needs an application made for widgets.
    Application application(argc, argv);
    name_the_program();
    const auto asked = touch::read_wishes(QApplication::arguments());
    if (const auto* notice = std::get_if<touch::Notice>(&asked)) {
        std::fputs(notice->text.toUtf8().constData(), notice->is_error ? stderr : stdout);
        return notice->is_error ? unusable : 0;
    }
    const auto& wishes = std::get<touch::Wishes>(asked);
    const scenario::AlsoAllowed allowed(paths_of(wishes.weather_from));
    if (wishes.prints) return printing::print_to_file(wishes.print);
    if (has_nothing_to_picture(wishes)) return unusable;
    return show_window(application, wishes);
}
