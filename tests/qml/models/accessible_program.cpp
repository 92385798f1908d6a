// The window as a screen reader meets it.
#include <array>

#include <QAccessible>
#include <QLibraryInfo>
#include <QQmlApplicationEngine>
#include <QQuickWindow>
#include <QTest>
#include <QVersionNumber>
#include <gtest/gtest.h>

#include "models/plan_runner.hpp"
#include "support/hand_made_plan.hpp"

namespace {

struct Heard {
    QAccessible::Role role;
    QString name;
    QString description;
};

void listen(QAccessibleInterface* heard, QList<Heard>& all) {
    if (!heard) return;
    all.append(
        {heard->role(), heard->text(QAccessible::Name), heard->text(QAccessible::Description)});
    for (int child = 0; child < heard->childCount(); ++child)
        listen(heard->child(child), all);
}

bool has(const QList<Heard>& all, QAccessible::Role role, const QString& name) {
    return std::ranges::any_of(
        all, [&](const Heard& one) { return one.role == role && one.name.contains(name); });
}

TEST(program_for_a_screen_reader, says_the_answer_the_candle_the_plot_and_every_control) {
    touch::PlanRunner::set_planner(touch_tests::hand_made_view);
    QAccessible::setActive(true);
    QQmlApplicationEngine engine;
    engine.addImportPath("qrc:/qt/qml");
    engine.load(QUrl("qrc:/qt/qml/Candlemark/Main.qml"));
    ASSERT_FALSE(engine.rootObjects().isEmpty());
    auto* window = qobject_cast<QQuickWindow*>(engine.rootObjects().constFirst());
    const auto* plan = window->property("plan").value<touch::PlanRunner*>();
    ASSERT_TRUE(QTest::qWaitFor([&] { return plan->answered() && !plan->running(); }));
    QTest::qWait(50);

    QList<Heard> all;
    listen(QAccessible::queryAccessibleInterface(window), all);
    EXPECT_TRUE(has(all, QAccessible::StaticText, plan->sentence()));
    EXPECT_TRUE(has(all, QAccessible::StaticText, "This is an example"));
    EXPECT_TRUE(has(all, QAccessible::Graphic, "Candle"));
    EXPECT_TRUE(has(all, QAccessible::Chart, "Stored energy"));
    EXPECT_TRUE(has(all, QAccessible::SpinBox, "Expansion packs"));
    for (const QString name :
         {"Less: Panels", "More: Panels", "More: Expansion packs", "Less: Outage days",
          "Open a scenario file", "Save the scenario file", "Use the light look", "An hour later",
          "Show as a table", "Theme, size of the text", "Take the last change back",
          "Make the change again"}) {
        EXPECT_TRUE(has(all, QAccessible::Button, name)) << name.toStdString();
    }
    // Tabs, as they are told; Qt 6.4 takes every button for a button once somebody listens.
    const auto role =
        QLibraryInfo::version() < QVersionNumber(6, 5) ? QAccessible::Button : QAccessible::PageTab;
    for (const QString name : {"Days", "Loads", "Packs", "Storage"}) {
        EXPECT_TRUE(has(all, role, name)) << name.toStdString();
    }
    const bool finding_is_heard = std::ranges::any_of(all, [](const Heard& one) {
        return one.role == QAccessible::ListItem && one.name.startsWith("NOTE. load refrigerator");
    });
    EXPECT_TRUE(finding_is_heard);
    touch::PlanRunner::set_planner({});
}

bool is_control(QAccessible::Role role) {
    using enum QAccessible::Role;
    constexpr std::array controls{Button,       RadioButton, CheckBox, SpinBox,
                                  EditableText, PageTab,     Slider};
    return std::ranges::find(controls, role) != controls.end();
}

// Every control below an interface has a name and, where it is pressed, says that it can be.
void expect_controls_named(QAccessibleInterface* heard, const std::string& page, int& controls) {
    if (!heard) return;
    const QAccessible::Role role = heard->role();
    if (is_control(role) && !heard->state().invisible) {
        ++controls;
        EXPECT_FALSE(heard->text(QAccessible::Name).trimmed().isEmpty())
            << page << ", role " << static_cast<int>(role) << ", "
            << (heard->object() ? heard->object()->objectName().toStdString() : "");
        if (role == QAccessible::Button) {
            const QStringList actions =
                heard->actionInterface() ? heard->actionInterface()->actionNames() : QStringList();
            EXPECT_TRUE(actions.contains(QAccessibleActionInterface::pressAction()))
                << page << ": " << heard->text(QAccessible::Name).toStdString();
        }
    }
    for (int child = 0; child < heard->childCount(); ++child)
        expect_controls_named(heard->child(child), page, controls);
}

TEST(program_for_a_screen_reader, names_every_control_of_every_page) {
    touch::PlanRunner::set_planner(touch_tests::hand_made_view);
    QAccessible::setActive(true);
    QQmlApplicationEngine engine;
    engine.addImportPath("qrc:/qt/qml");
    engine.load(QUrl("qrc:/qt/qml/Candlemark/Main.qml"));
    ASSERT_FALSE(engine.rootObjects().isEmpty());
    auto* window = qobject_cast<QQuickWindow*>(engine.rootObjects().constFirst());
    const auto* plan = window->property("plan").value<touch::PlanRunner*>();
    ASSERT_TRUE(QTest::qWaitFor([&] { return plan->answered() && !plan->running(); }));
    for (const char* page :
         {"days", "loads", "packs", "sun", "start", "wiring", "storage", "print", "file"}) {
        window->setProperty("page", QString::fromLatin1(page));
        ASSERT_TRUE(QTest::qWaitFor(
            [&] {
                const auto* item = window->property("pageItem").value<QObject*>();
                return item && !item->property("busy").toBool();
            },
            20000));
        QTest::qWait(50);
        int controls = 0;
        expect_controls_named(QAccessible::queryAccessibleInterface(window), page, controls);
        EXPECT_GT(controls, 10) << page;
    }
    touch::PlanRunner::set_planner({});
}

}  // namespace
