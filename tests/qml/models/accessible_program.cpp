// The window as a screen reader meets it.
#include <array>

#include <QAccessible>
#include <QQmlApplicationEngine>
#include <QQuickWindow>
#include <QTest>
#include <gtest/gtest.h>

#include "models/plan_runner.hpp"
#include "scenario/keys/most.hpp"
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
    EXPECT_TRUE(has(all, QAccessible::Notification, plan->sentence()));
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
    for (const QString name : {"Days", "Loads", "Packs", "Storage"}) {
        // Without a bus Qt keeps the role of its own button.
        EXPECT_TRUE(has(all, QAccessible::PageTab, name) || has(all, QAccessible::Button, name))
            << name.toStdString();
    }
    const bool finding_is_heard = std::ranges::any_of(all, [](const Heard& one) {
        return one.role == QAccessible::ListItem && one.name.startsWith("NOTE. load refrigerator");
    });
    EXPECT_TRUE(finding_is_heard);
    touch::PlanRunner::set_planner({});
}

// The first below an interface with a role and a name that holds a text; null when there is none.
QAccessibleInterface* found(QAccessibleInterface* heard, QAccessible::Role role,
                            const QString& name) {
    if (!heard) return nullptr;
    if (heard->role() == role && heard->text(QAccessible::Name).contains(name)) return heard;
    for (int child = 0; child < heard->childCount(); ++child)
        if (auto* below = found(heard->child(child), role, name)) return below;
    return nullptr;
}

// A window on a page, and what is heard of it.
class HeardWindow : public testing::Test {
  protected:
    void SetUp() override {
        touch::PlanRunner::set_planner(touch_tests::hand_made_view);
        QAccessible::setActive(true);
        engine.addImportPath("qrc:/qt/qml");
        engine.load(QUrl("qrc:/qt/qml/Candlemark/Main.qml"));
        ASSERT_FALSE(engine.rootObjects().isEmpty());
        window = qobject_cast<QQuickWindow*>(engine.rootObjects().constFirst());
        ASSERT_TRUE(QTest::qWaitFor(
            [&] { return window->property("plan").value<touch::PlanRunner*>()->answered(); }));
    }
    void TearDown() override { touch::PlanRunner::set_planner({}); }
    void show(const char* page) {
        window->setProperty("page", QString::fromLatin1(page));
        ASSERT_TRUE(QTest::qWaitFor(
            [&] {
                const auto* item = window->property("pageItem").value<QObject*>();
                return item && !item->property("busy").toBool();
            },
            20000));
        QTest::qWait(100);
    }
    QAccessibleInterface* part(QAccessible::Role role, const QString& name) {
        auto* heard = found(QAccessible::queryAccessibleInterface(window), role, name);
        EXPECT_NE(heard, nullptr) << name.toStdString();
        return heard;
    }
    QQmlApplicationEngine engine;
    QQuickWindow* window = nullptr;
};

TEST_F(HeardWindow, a_count_tells_its_value_and_can_be_turned) {
    show("days");
    auto* packs = part(QAccessible::SpinBox, "Expansion packs");
    ASSERT_TRUE(packs && packs->valueInterface());
    EXPECT_EQ(packs->valueInterface()->currentValue().toDouble(), 3.0);
    EXPECT_EQ(packs->valueInterface()->maximumValue().toDouble(), scenario::most_packs);
    EXPECT_EQ(packs->valueInterface()->minimumStepSize().toDouble(), 1.0);
    packs->valueInterface()->setCurrentValue(5.0);
    EXPECT_TRUE(
        QTest::qWaitFor([&] { return packs->valueInterface()->currentValue().toDouble() == 5.0; }));
}

TEST_F(HeardWindow, the_tilt_tells_its_value_and_can_be_turned) {
    show("sun");
    auto* tilt = part(QAccessible::Slider, "Tilt of the panels");
    ASSERT_TRUE(tilt && tilt->valueInterface());
    EXPECT_EQ(tilt->valueInterface()->currentValue().toDouble(), 60.0);
    EXPECT_EQ(tilt->valueInterface()->maximumValue().toDouble(), 90.0);
    tilt->valueInterface()->setCurrentValue(45.0);
    EXPECT_TRUE(
        QTest::qWaitFor([&] { return tilt->valueInterface()->currentValue().toDouble() == 45.0; }));
}

TEST_F(HeardWindow, what_cannot_be_pressed_says_so) {
    auto* undo = part(QAccessible::Button, "Take the last change back");
    ASSERT_TRUE(undo);
    EXPECT_TRUE(undo->state().disabled);
    EXPECT_TRUE(undo->text(QAccessible::Description).contains("not available"));
    EXPECT_TRUE(undo->actionInterface()->actionNames().isEmpty());
    auto* more = part(QAccessible::Button, "More: Panels");
    ASSERT_TRUE(more);
    EXPECT_FALSE(more->state().disabled);
    more->actionInterface()->doAction(QAccessibleActionInterface::pressAction());
    EXPECT_TRUE(QTest::qWaitFor([&] { return !undo->state().disabled; }));
}

bool is_control(QAccessible::Role role) {
    using enum QAccessible::Role;
    constexpr std::array controls{Button,       RadioButton, CheckBox, SpinBox,
                                  EditableText, PageTab,     Slider};
    return std::ranges::find(controls, role) != controls.end();
}

// Every control below an interface has a name and, where it may be pressed now, says that it can be.
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
            EXPECT_EQ(actions.contains(QAccessibleActionInterface::pressAction()),
                      !heard->state().disabled)
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
         {"now", "days", "loads", "packs", "sun", "start", "wiring", "storage", "print", "file"}) {
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
