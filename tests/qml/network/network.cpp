// A scenario from a stranger makes no program call anywhere: a listener on this machine counts who
// knocks while hostile files are shown on every page, pictured, printed and answered.
#include <array>
#include <cstdlib>
#include <filesystem>
#include <fstream>

#include <QApplication>
#include <QQmlApplicationEngine>
#include <QQmlComponent>
#include <QQmlExtensionPlugin>
#include <QQuickItem>
#include <QQuickWindow>
#include <QTcpServer>
#include <QTcpSocket>
#include <QTemporaryDir>
#include <QTest>
#include <gtest/gtest.h>

#include "command_line/questions.hpp"
#include "command_line/run.hpp"
#include "models/file/no_network.hpp"
#include "models/file/scenario_document.hpp"
#include "print/print_file.hpp"
#include "scenario/file/read.hpp"

Q_IMPORT_QML_PLUGIN(CandlemarkPlugin)

namespace {

// Counts every connection to a port of its own.
class Listener {
  public:
    Listener() {
        server_.listen(QHostAddress::LocalHost);
        QObject::connect(&server_, &QTcpServer::newConnection, [this] {
            while (QTcpSocket* caller = server_.nextPendingConnection()) {
                ++calls_;
                caller->abort();
                caller->deleteLater();
            }
        });
    }
    [[nodiscard]] std::string host() const {
        return "127.0.0.1:" + std::to_string(server_.serverPort());
    }
    [[nodiscard]] int calls() const { return calls_; }
    [[nodiscard]] bool is_listening() const { return server_.isListening(); }

  private:
    QTcpServer server_;
    int calls_ = 0;
};

// What programs that read markup would fetch; %1 is the listener.
constexpr std::array payloads{
    "<img src='http://%1/a'>",
    "<b>x</b><img src=http://%1/b width=900 height=900>",
    "<img src='http:&#47;&#47;%1&#47;c'>",
    "<img src='//%1/d'>",
    "<img src='ftp://%1/e'>",
    "<a href='http://%1/f'>press</a>",
    "<link rel='stylesheet' href='http://%1/g'>",
    "<style>@import url(http://%1/h)</style>",
    "<table background='http://%1/i'><tr><td>x</table>",
    "<object data='http://%1/j'></object>",
    "<iframe src='http://%1/k'></iframe>",
    "<svg><image xlink:href='http://%1/l'/></svg>",
    "<script src='http://%1/m'></script>",
    "![x](http://%1/n)",
    "<http://%1/o>",
    "<!DOCTYPE html><img src='http://%1/p'>",
    "<video src='http://%1/q' autoplay>",
    "</text><image href='http://%1/r'/>",
    "<font size=7><img src='HTTP://%1/s'></font>",
    "=WEBSERVICE('http://%1/t')",
};

// Where a file has words of a person; each is the payload in some file.
enum Place {
    title,
    pack,
    other_pack,
    load,
    circuit,
    charger,
    spot,
    weather,
    like,
    unknown,
    places
};

std::string scenario_with(const std::string& words, int number) {
    const auto at = [&](Place place, const char* usual) {
        // All names at once in every other file, so that each page shows some.
        const bool here = number % 2 == 0 ? place < spot : number / 2 % places == place;
        std::string name = here ? words : usual;
        if (here && (place == pack || place == other_pack || place == load || place == circuit ||
                     place == charger))
            name += " " + std::to_string(place);  // names must differ
        return "\"" + name + "\"";
    };
    std::string text = "format = 1\ntitle = " + at(title, "x") + "\n";
    text += "[outage]\nstarts = 2026-01-14T18:00:00\nlasts = \"1 d\"\n";
    const bool has_weather = number % 2 != 0 && number / 2 % places == weather;
    text += has_weather ? "[place]\nweather_file = " + at(weather, "") + "\n"
                        : "[place]\nname = " + at(spot, "Chicago IL") + "\n";
    text += "[[pack]]\nname = " + at(pack, "main") +
            "\nchemistry = \"lifepo4\"\ncapacity = \"100 Ah\"\nvoltage = \"12.8 V\"\n"
            "[[pack]]\nname = " +
            at(other_pack, "spare") + "\ncount = 1\n";
    text +=
        "[inverter]\ncontinuous = \"2 kW\"\nsurge = \"4 kW\"\ncutoff_voltage = \"10.5 V\"\n"
        "[[panel]]\npower = \"100 W\"\n";
    text += "[[charger]]\nname = " + at(charger, "mains") +
            "\nkind = \"wall\"\ncurrent = \"10 A\"\nhours = [\"10:00-11:00\"]\n";
    text += "[[load]]\nname = " + at(load, "pump") +
            "\nfrom = \"ac\"\npower = \"300 W\"\nhours = [\"18:00-19:00\"]\n"
            "motor = { kind = \"capacitor_start\" }\n";
    if (number % 2 != 0 && number / 2 % places == like)
        text += "[[load]]\nname = \"y\"\nlike = " + at(like, "") + "\n";
    text += "[[circuit]]\nname = " + at(circuit, "main path") +
            "\nfeeds = [\"inverter\"]\nlinks = [{ fuse = \"250 A\" }, { wire = \"2/0 AWG\", length "
            "= \"2 ft\" }]\n";
    if (number % 2 != 0 && number / 2 % places == unknown)
        text += "[strange]\n" + at(unknown, "") + " = " + at(unknown, "") + "\n";
    return text;
}

std::string hostile_file(int number, const std::string& host) {
    std::string words = payloads[static_cast<std::size_t>(number) % payloads.size()];
    words.replace(words.find("%1"), 2, host);
    // Every payload comes in files of either kind.
    return scenario_with(words, number + number / static_cast<int>(payloads.size()));
}

int files_to_try() {
    const char* wished = std::getenv("CANDLEMARK_HOSTILE_FILES");
    return wished ? std::max(1, std::atoi(wished)) : 6;
}

bool says(const QObject* object, const char* property) {
    return object && object->property(property).toBool();
}

bool is_at_work(const QQuickWindow* window) {
    const auto* plan = window->property("plan").value<QObject*>();
    const auto* page = window->property("pageItem").value<QObject*>();
    return says(plan, "running") || says(plan, "weighing") || says(page, "busy");
}

const QStringList pages{"now",   "days",   "loads",   "packs", "sun",
                        "start", "wiring", "storage", "print", "file"};

TEST(network, the_listener_hears_a_call_and_guards_stop_it) {
    const Listener listener;
    ASSERT_TRUE(listener.is_listening());
    const auto host = QString::fromStdString(listener.host());
    const QByteArray screen = QStringLiteral(
                                  "import QtQuick\nItem { width: 90; height: 90\n"
                                  "Text { text: \"<img src='http://%1/a'>\" }\n"
                                  "Image { source: 'http://%1/b' }\n"
                                  "Loader { source: 'http://%1/c.qml' }\n"
                                  "FontLoader { source: 'http://%1/d.ttf' }\n"
                                  "Component.onCompleted: { const x = new XMLHttpRequest(); "
                                  "x.open('GET', 'http://%1/e'); x.send() } }")
                                  .arg(host)
                                  .toUtf8();
    const auto show = [&](bool guarded) {
        QQmlEngine engine;
        if (guarded) touch::keep_off_the_network(engine);
        QQmlComponent component(&engine);
        component.setData(screen, QUrl("qrc:/shown.qml"));
        QQuickWindow window;
        const std::unique_ptr<QObject> object(component.create());
        auto* item = qobject_cast<QQuickItem*>(object.get());
        ASSERT_NE(item, nullptr) << component.errorString().toStdString();
        item->setParentItem(window.contentItem());
        window.show();
        if (guarded)
            QTest::qWait(700);
        else
            EXPECT_TRUE(QTest::qWaitFor([&] { return listener.calls() >= 3; }, 30'000));
    };
    show(true);
    EXPECT_EQ(listener.calls(), 0);
    show(false);
}

TEST(network, nobody_is_called_for_a_hostile_file_on_any_page_picture_or_paper) {
    const Listener listener;
    ASSERT_TRUE(listener.is_listening());
    const QTemporaryDir folder;
    QQmlApplicationEngine engine;
    touch::keep_off_the_network(engine);
    engine.addImportPath("qrc:/qt/qml");
    engine.setInitialProperties({{"width", 900}, {"height", 700}});
    engine.load(QUrl("qrc:/qt/qml/Candlemark/Main.qml"));
    ASSERT_FALSE(engine.rootObjects().isEmpty());
    auto* window = qobject_cast<QQuickWindow*>(engine.rootObjects().constFirst());
    auto* document = window->property("scenario").value<touch::ScenarioDocument*>();
    ASSERT_NE(document, nullptr);
    int answered = 0;
    int printed = 0;
    const int files = files_to_try();
    for (int number = 0; number < files; ++number) {
        const std::string text = hostile_file(number, listener.host());
        const QString path = folder.filePath(QStringLiteral("%1<b>.toml").arg(number));
        std::ofstream(path.toStdString()) << text;
        ASSERT_TRUE(document->open(QUrl::fromLocalFile(path)));
        for (const QString& page : pages) {
            window->setProperty("page", page);
            ASSERT_TRUE(QTest::qWaitFor([&] { return !is_at_work(window); }, 120'000))
                << page.toStdString();
            EXPECT_FALSE(window->grabWindow().isNull());
        }
        answered += says(window->property("plan").value<QObject*>(), "answered");
        const auto read = scenario::read_scenario_file(path.toStdString());
        for (const auto kind :
             {printing::Kind::card, printing::Kind::report, printing::Kind::wiring}) {
            if (!read) continue;
            const auto sheets =
                printing::sheets_of(*read, kind, printing::Paper::a4, QDate(2026, 1, 14));
            if (!sheets) continue;
            ++printed;
            EXPECT_FALSE(
                printing::in_pdf(*sheets, QString::fromStdString(read->scenario.title)).isEmpty());
        }
        QTest::qWait(1);
    }
    QTest::qWait(200);  // for what would come late
    EXPECT_EQ(listener.calls(), 0);
    EXPECT_GE(answered, files / 2);  // the words were shown, not only refused
    EXPECT_GE(printed, files);
    RecordProperty("files", files);
}

// The same files in the command's faces: HTML and SVG hold no markup of the file, CSV no formula.
TEST(network, no_face_of_the_command_holds_a_files_markup) {
    const QTemporaryDir folder;
    const auto path = folder.filePath("plan.toml").toStdString();
    int answers = 0;
    for (const int number : {0, 6, 12, 18, 37, 39}) {
        std::ofstream(path) << hostile_file(number, "127.0.0.1:9");
        for (const auto& question : command_line::questions()) {
            for (const char* face : {"html", "svg", "csv"}) {
                std::vector<std::string> arguments{question.name, path, "--as", face};
                if (std::string_view(question.name) == "compare")
                    arguments.insert(arguments.begin() + 2, path);
                if (std::string_view(question.name) == "gauge")
                    arguments.insert(arguments.end(), {"--reads", "12.9 V"});
                if (std::string_view(question.name) == "packs")
                    arguments.insert(arguments.end(), {"--weathers", "10"});
                const auto outcome = command_line::run(arguments, {.standard_input = {}});
                EXPECT_NE(outcome.status, command_line::Status::defect) << outcome.errors;
                if (outcome.output.empty()) continue;
                ++answers;
                const std::string where = std::string(question.name) + " as " + face;
                if (std::string_view(face) == "csv") {
                    for (const char* begins : {"\n=", ",=", "\n\"=", ",\"=", "\n@", ",@"})
                        EXPECT_EQ(outcome.output.find(begins), std::string::npos) << where;
                    continue;
                }
                for (const char* markup : {"<img", "<b>x", "<a ", "<link", "<script", "<iframe",
                                           "<object", "<image", "<video", "<font", "<table b"})
                    EXPECT_EQ(outcome.output.find(markup), std::string::npos) << where << markup;
            }
        }
    }
    EXPECT_GT(answers, 50);
}

}  // namespace

int main(int argc, char** argv) {
    // Its tests are listed where the environment of a test is not set yet.
    if (!qEnvironmentVariableIsSet("QT_QPA_PLATFORM")) qputenv("QT_QPA_PLATFORM", "offscreen");
    const QApplication application(argc, argv);
    testing::InitGoogleTest(&argc, argv);
    return RUN_ALL_TESTS();
}
