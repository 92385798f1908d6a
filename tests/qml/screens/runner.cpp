// Runs one tst_*.qml with the program's own module, on a plan made by hand.
#include "models/plan_runner.hpp"
#include "support/hand_made_plan.hpp"
#include <QApplication>
#include <QQmlEngine>
#include <QQmlExtensionPlugin>
#include <QtQuickTest/quicktest.h>

Q_IMPORT_QML_PLUGIN(CandlemarkPlugin)

class Setup : public QObject {
    Q_OBJECT

  public slots:
    void applicationAvailable() { touch::PlanRunner::set_planner(touch_tests::hand_made_view); }
    void qmlEngineAvailable(QQmlEngine* engine) {
        engine->addImportPath(QStringLiteral("qrc:/qt/qml"));
    }
};

int main(int argc, char** argv) {
    const QApplication application(argc, argv);
    Setup setup;
    return quick_test_main_with_setup(argc, argv, "touch", "", &setup);
}

#include "runner.moc"
