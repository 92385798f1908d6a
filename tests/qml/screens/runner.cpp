// Runs one tst_*.qml with the program's own module, on a plan made by hand; a tst_real_*.qml on the
// plan of the engine.
#include <ctime>
#include <stdexcept>
#include <utility>

#include <QApplication>
#include <QDir>
#include <QQmlContext>
#include <QQmlEngine>
#include <QQmlError>
#include <QQmlExtensionPlugin>
#include <QtQuickTest/quicktest.h>

#include "models/now/now_clock.hpp"
#include "models/now/now_runner.hpp"
#include "models/plan_runner.hpp"
#include "support/hand_made_now.hpp"
#include "support/hand_made_plan.hpp"

Q_IMPORT_QML_PLUGIN(CandlemarkPlugin)

// A scenario of this title stands for one at which the engine fails.
static touch::DaysView view_or_fault(const QString& text, const QString& file) {
    if (text.contains(QStringLiteral("title = \"a fault of ours\"")))
        throw std::runtime_error("a level lies below zero");
    return touch_tests::hand_made_view(text, file);
}

// The evening of the second day of the example's outage.
static void live_through_the_example() {
    touch::NowClock::set_source(
        [] { return units::local_time(std::chrono::year(2026) / 1 / 15, 21.5 * units::hour); });
}

// What the screens complained of; a test asks for it by the name "complaints".
class Complaints : public QObject {
    Q_OBJECT

  public:
    void hear(const QList<QQmlError>& warnings) {
        for (const QQmlError& one : warnings)
            heard_ << one.toString();
    }
    // Since it was asked for last, a line each.
    Q_INVOKABLE QString taken() { return std::exchange(heard_, {}).join(QLatin1Char('\n')); }

  private:
    QStringList heard_;
};

// What the thread of the screen has worked so far, by the name "processor".
class Processor : public QObject {
    Q_OBJECT

  public:
    Q_INVOKABLE double milliseconds() const {
        timespec spent{};
        clock_gettime(CLOCK_THREAD_CPUTIME_ID, &spent);
        return 1e3 * double(spent.tv_sec) + 1e-6 * double(spent.tv_nsec);
    }
};

class Setup : public QObject {
    Q_OBJECT

  public slots:
    void applicationAvailable() {
        const QString arguments = QCoreApplication::arguments().join(QLatin1Char(' '));
        if (!arguments.contains(QStringLiteral("tst_real_")))
            touch::PlanRunner::set_planner(view_or_fault);
        if (arguments.contains(QStringLiteral("_now"))) live_through_the_example();
        if (arguments.contains(QStringLiteral("tst_now")))
            touch::NowRunner::set_asker(touch_tests::hand_made_now);
    }
    void qmlEngineAvailable(QQmlEngine* engine) {
        engine->addImportPath(QStringLiteral("qrc:/qt/qml"));
        const QString pictures = QStringLiteral(CANDLEMARK_BINARY_DIR "/pictures");
        QDir().mkpath(pictures);
        connect(engine, &QQmlEngine::warnings, &complaints_, &Complaints::hear);
        engine->rootContext()->setContextProperty(QStringLiteral("complaints"), &complaints_);
        engine->rootContext()->setContextProperty(QStringLiteral("pictureFolder"), pictures);
        engine->rootContext()->setContextProperty(QStringLiteral("processor"), &processor_);
    }

  private:
    Complaints complaints_;
    Processor processor_;
};

int main(int argc, char** argv) {
    const QApplication application(argc, argv);
    Setup setup;
    return quick_test_main_with_setup(argc, argv, "touch", "", &setup);
}

#include "runner.moc"
